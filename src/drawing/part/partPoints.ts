import type { PlacedHole } from '../../core/part/part.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { describeHole } from '../../core/tooling/hole.js';
import type { Point } from '../drawing.js';
import type { HoleSetting } from './settingMarks.js';
import type { DrawnGroup } from './drawnGroup.js';
import type { PartPlan } from './partPlan.js';
import { type View, xOf, yOf } from './partView.js';
import { placeWords } from './placeWords.js';
import type { Mark } from './work.js';

/** What the arrow keys go through: the holes, then miters, clips, notches and bends, as far as they are shown. */
export function pointsOf(
  { face, fence, groups, works }: PartPlan,
  view: View,
  unit: LengthUnit,
  settings: readonly HoleSetting[] = [],
): Point[] {
  const place = placeWords(fence, face.widthMm, unit);
  const marks = [
    ...groups.flatMap((group) => holeMarks(group, place, unit, settings)),
    ...works.flatMap((work) => work.marks),
  ];
  return marks.flatMap((mark) => {
    const x = xOf(view, mark.x);
    return x === undefined ? [] : [{ x, y: yOf(view, mark.y), label: mark.label }];
  });
}

function holeMarks(
  { group, holes, isRead, made }: DrawnGroup,
  place: ReturnType<typeof placeWords>,
  unit: LengthUnit,
  settings: readonly HoleSetting[],
): Mark[] {
  const how = made === '' ? '' : `, ${made}`;
  const settingOf = (hole: PlacedHole) => {
    const found = settings.find((each) => each.group === hole.group && each.index === hole.index);
    return found ? `, setting ${found.number}` : '';
  };
  return holes.map((hole) => ({
    ...hole.center,
    label: `${group.title}, ${hole.index} of ${group.count}, ${describeHole(group.hole, unit)}${how}: ${place(hole.center, Object.values(group.typed ?? {}))}${isRead(hole) ? ', as read' : ''}${settingOf(hole)}.`,
  }));
}
