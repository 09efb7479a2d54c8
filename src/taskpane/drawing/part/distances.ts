import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { Shape } from '../drawing.js';
import { acrossDimension, alongDimension } from './dimensions.js';
import type { DistanceKind, GoverningDistance } from './governingDistance.js';
import { type View, xOf, yOf } from './partView.js';
import type { PlacedGroup, PlacedHole } from './placedHoles.js';

interface Wanted {
  governs: GoverningDistance | undefined;
  all: boolean;
  unit: LengthUnit;
}

/** A distance on the part: between two places, in mm. */
interface Distance {
  kind: DistanceKind;
  group: string;
  fromMm: number;
  toMm: number;
  /** Where the hole lies in the other direction. */
  besideMm: number;
}

const firstLevel = 18;
const levelHeight = 42;

/** The distance that decides the row; on request all that the row gives. */
export function distanceShapes(
  groups: readonly PlacedGroup[],
  view: View,
  wanted: Wanted,
): { shapes: Shape[]; bottom: number } {
  const shapes: Shape[] = [];
  let bottom = yOf(view, view.widthMm);
  let level = bottom + firstLevel;
  let column = 0;
  for (const distance of groups.flatMap((group) => distancesOf(group, view.widthMm))) {
    const governs = isGoverning(distance, wanted);
    if (!governs && !wanted.all) continue;
    const text = textOf(distance, governs ? wanted.governs : undefined, wanted.unit);
    if (isAcross(distance.kind)) {
      const beside = xOf(view, distance.besideMm);
      if (beside === undefined) continue;
      const atFence = distance.fromMm === 0;
      const across = { start: beside, level: beside + 26 + column * 12, atFence };
      shapes.push(
        ...acrossDimension(yOf(view, distance.fromMm), yOf(view, distance.toMm), across, { text, governs }),
      );
      column += 1;
    } else {
      const [from, to] = [xOf(view, distance.fromMm), xOf(view, distance.toMm)];
      if (from === undefined || to === undefined) continue;
      const along = { start: yOf(view, distance.besideMm), level };
      shapes.push(...alongDimension(from, to, along, { text, governs }));
      bottom = level + 28;
      level += levelHeight;
    }
  }
  return { shapes: textLast(shapes), bottom };
}

/** Text above all lines, the boxed one above other text. */
function textLast(shapes: readonly Shape[]): Shape[] {
  const rank = (shape: Shape) => (shape.kind === 'text' ? (shape.behind === 'box' ? 2 : 1) : 0);
  return [...shapes].sort((a, b) => rank(a) - rank(b));
}

const isAcross = (kind: DistanceKind) => kind === 'edge distance' || kind === 'gage';

function isGoverning(distance: Distance, { governs, unit }: Wanted): boolean {
  return (
    governs !== undefined &&
    governs.group === distance.group &&
    governs.kind === distance.kind &&
    governs.given === formatLength(distance.toMm - distance.fromMm, unit)
  );
}

function textOf(
  { fromMm, toMm }: Distance,
  governs: GoverningDistance | undefined,
  unit: LengthUnit,
): string {
  return governs ? `${governs.given} < ${governs.least}` : formatLength(toMm - fromMm, unit);
}

/** What the row itself gives, and what a gage leaves at the far edge. */
function distancesOf({ group, place, holes }: PlacedGroup, widthMm: number): Distance[] {
  const [first] = holes;
  if (!first) return [];
  const name = group.title;
  const last = holes.at(-1) ?? first;
  const distances: Distance[] = [];
  const across = (fromMm: number, toMm: number, kind: DistanceKind, hole: PlacedHole) =>
    distances.push({ kind, group: name, fromMm, toMm, besideMm: hole.alongMm });
  const along = (fromMm: number, toMm: number, kind: DistanceKind) =>
    distances.push({ kind, group: name, fromMm, toMm, besideMm: last.acrossMm });
  if (place.edgeMm !== undefined) across(0, first.acrossMm, 'edge distance', first);
  if (last.acrossMm > first.acrossMm) {
    across(first.acrossMm, last.acrossMm, 'gage', first);
    across(last.acrossMm, widthMm, 'edge distance', first);
  }
  if (group.endMm !== undefined) along(0, first.alongMm, 'end distance');
  const second = holes.find(
    ({ acrossMm, alongMm }) => acrossMm === first.acrossMm && alongMm > first.alongMm,
  );
  if (group.pitchMm !== undefined && second) along(first.alongMm, second.alongMm, 'pitch');
  return distances;
}
