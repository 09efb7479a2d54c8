import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { describeHole } from '../../../core/tooling/hole.js';
import type { Point } from '../drawing.js';
import type { Fence } from '../../../core/row/outline/fence.js';
import type { PartPlan } from './partPlan.js';
import { type View, xOf, yOf } from './partView.js';
import type { PlacedGroup } from './placedHoles.js';
import type { Mark } from './work.js';

/** What the arrow keys go through: the holes, then miters, clips, notches and bends, as far as they are shown. */
export function pointsOf({ ends, fence, groups, works }: PartPlan, view: View, unit: LengthUnit): Point[] {
  const marks = [
    ...groups.flatMap((group) => holeMarks(group, fence, ends.widthMm, unit)),
    ...works.flatMap((work) => work.marks),
  ];
  return marks.flatMap(({ alongMm, acrossMm, label }) => {
    const x = xOf(view, alongMm);
    return x === undefined ? [] : [{ x, y: yOf(view, acrossMm), label }];
  });
}

function holeMarks(
  { holes, made }: PlacedGroup,
  { side, edge }: Fence,
  widthMm: number,
  unit: LengthUnit,
): Mark[] {
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const how = made === '' ? '' : `, ${made}`;
  const fromFenceMm = (acrossMm: number) => (side === 'throat' ? acrossMm : widthMm - acrossMm);
  return holes.map(({ group, number, alongMm, acrossMm }) => ({
    alongMm,
    acrossMm,
    label: `${group.title}, ${number} of ${group.count}, ${describeHole(group.hole, unit)}${how}: ${size(alongMm)} from the stop, ${size(fromFenceMm(acrossMm))} from the ${edge} at the fence.`,
  }));
}
