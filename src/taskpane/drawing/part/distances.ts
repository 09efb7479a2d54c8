import { formatLength } from '../../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import type { DistanceKind, GoverningDistance } from './governingDistance.js';
import type { PlacedGroup } from './placedHoles.js';
import type { Place } from '../../../core/row/outline/place.js';

/** A distance on the part, from one place to another. */
export interface Distance {
  kind: DistanceKind | 'length';
  group: string;
  direction: 'along' | 'across';
  from: Place;
  to: Place;
  /** Where an extension line starts at a hole; an edge or end needs none across the part. */
  holes: ('from' | 'to')[];
  text: string;
  governs: boolean;
}

interface Part {
  lengthMm: number | undefined;
  widthMm: number;
}

interface Wanted {
  governs: GoverningDistance | undefined;
  all: boolean;
  unit: LengthUnit;
}

/** The distance that decides the row; on request all that the row gives. The one that decides comes first. */
export function wantedDistances(
  groups: readonly PlacedGroup[],
  part: Part,
  { governs, all, unit }: Wanted,
): Distance[] {
  const distances = [
    ...groups.flatMap((group) => distancesOf(group, part)),
    ...(part.lengthMm === undefined ? [] : [wholeLength(part.lengthMm, part.widthMm)]),
  ].map((distance): Distance => {
    const text = formatLength(sizeMm(distance), unit);
    const decides =
      governs?.group === distance.group && governs.kind === distance.kind && governs.given === text;
    return { ...distance, governs: decides, text: decides ? `${text} < ${governs.least}` : text };
  });
  const first = distances.find((distance) => distance.governs);
  // The far end follows from the length and the rest.
  const others = distances.filter((distance) => distance !== first && distance.kind !== 'far end distance');
  const rest = all ? others : [];
  return [...(first ? [first] : []), ...rest.map((distance) => ({ ...distance, governs: false }))];
}

type Bare = Omit<Distance, 'text' | 'governs'>;

function sizeMm({ direction, from, to }: Bare): number {
  return direction === 'along' ? to.alongMm - from.alongMm : to.acrossMm - from.acrossMm;
}

function wholeLength(lengthMm: number, widthMm: number): Bare {
  const place = (alongMm: number): Place => ({ alongMm, acrossMm: widthMm });
  return { kind: 'length', group: '', direction: 'along', from: place(0), to: place(lengthMm), holes: [] };
}

/** What the row itself gives, and what a gage leaves at the other edge. */
function distancesOf({ group, place, holes }: PlacedGroup, { lengthMm, widthMm }: Part): Bare[] {
  const [first] = holes;
  if (!first) return [];
  const last = holes.at(-1) ?? first;
  const distances: Bare[] = [];
  const add = (
    kind: DistanceKind,
    direction: 'along' | 'across',
    from: Place,
    to: Place,
    ...at: ('from' | 'to')[]
  ) => distances.push({ kind, group: group.title, direction, from, to, holes: at });
  if (place.edgeMm !== undefined) add('edge distance', 'across', { ...first, acrossMm: 0 }, first, 'to');
  const toHeel = place.element === 'leg' || place.element === 'flange';
  if (toHeel && place.gageMm !== undefined)
    add('gage', 'across', first, { ...first, acrossMm: widthMm }, 'from');
  if (last.acrossMm > first.acrossMm) {
    const other = { ...first, acrossMm: last.acrossMm };
    add('gage', 'across', first, other, 'from', 'to');
    add('edge distance', 'across', other, { ...first, acrossMm: widthMm }, 'from');
  }
  const along = (alongMm: number): Place => ({ alongMm, acrossMm: last.acrossMm });
  if (group.endMm !== undefined) add('end distance', 'along', along(0), along(first.alongMm), 'to');
  if (lengthMm !== undefined)
    add(
      'far end distance',
      'along',
      along(Math.max(...holes.map(({ alongMm }) => alongMm))),
      along(lengthMm),
      'from',
    );
  const second = holes.find(
    ({ acrossMm, alongMm }) => acrossMm === first.acrossMm && alongMm > first.alongMm,
  );
  if (group.pitchMm !== undefined && second)
    add('pitch', 'along', along(first.alongMm), along(second.alongMm), 'from', 'to');
  return distances;
}
