import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { HolePlace } from '../../../core/row/holePlace.js';
import { describeHole } from '../../../core/tooling/hole.js';
import type { Point } from '../drawing.js';
import type { PartPlan } from './partPlan.js';
import { type View, xOf, yOf } from './partView.js';
import type { PlacedGroup } from './placedHoles.js';
import type { Mark } from './work.js';

/** What the arrow keys go through: the holes, then miters, clips, notches and bends, as far as they are shown. */
export function pointsOf({ groups, works }: PartPlan, view: View, unit: LengthUnit): Point[] {
  const marks = [
    ...groups.flatMap((group) => holeMarks(group, unit)),
    ...works.flatMap((work) => work.marks),
  ];
  return marks.flatMap(({ alongMm, acrossMm, label }) => {
    const x = xOf(view, alongMm);
    return x === undefined ? [] : [{ x, y: yOf(view, acrossMm), label }];
  });
}

function holeMarks({ holes, place, made }: PlacedGroup, unit: LengthUnit): Mark[] {
  const size = (mm: number) => `${formatLength(mm, unit)} ${unit}`;
  const how = made === '' ? '' : `, ${made}`;
  return holes.map(({ group, number, alongMm, acrossMm }) => ({
    alongMm,
    acrossMm,
    label: `${group.title}, ${number} of ${group.count}, ${describeHole(group.hole, unit)}${how}: ${size(alongMm)} from the stop, ${size(acrossMm)} from the ${fenceSide(place)}.`,
  }));
}

/** What lies at the fence. */
function fenceSide({ element }: HolePlace): string {
  return element === 'leg' || element === 'flange' ? 'toe at the fence' : 'edge at the fence';
}
