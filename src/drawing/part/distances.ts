import type { PlacedHole } from '../../core/part/part.js';
import type { Point } from '../../core/part/point.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { DecidingDistance } from './decidingDistance.js';
import type { DrawnGroup } from './drawnGroup.js';

/** A distance on the part: along it from left to right, across it from the top down, or aslant. */
export interface Distance {
  direction: 'along' | 'across' | 'aslant';
  from: Point;
  to: Point;
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
  deciding: DecidingDistance | undefined;
  all: boolean;
  unit: LengthUnit;
}

const sameMm = 0.01;

/** The distance that decides the row; on request all that the row gives. The one that decides comes first. */
export function wantedDistances(
  groups: readonly DrawnGroup[],
  part: Part,
  { deciding, all, unit }: Wanted,
): Distance[] {
  const first = deciding ? [between(deciding.from, deciding.to, deciding.open, deciding.text, true)] : [];
  if (!all) return first;
  const given = [...groups.flatMap((group) => distancesOf(group, part)), ...wholeLength(part)].map(
    ({ from, to, open }) => {
      const text = formatLength(Math.hypot(to.x - from.x, to.y - from.y), unit);
      return between(from, to, open, text, false);
    },
  );
  return [...first, ...given.filter((distance) => !first.some((each) => isSame(each, distance)))];
}

function between(
  a: Point,
  b: Point,
  open: readonly ('from' | 'to')[],
  text: string,
  governs: boolean,
): Distance {
  const [isUpright, isLevel] = [Math.abs(a.x - b.x) < sameMm, Math.abs(a.y - b.y) < sameMm];
  const direction = isUpright ? 'across' : isLevel ? 'along' : 'aslant';
  const isTurned = direction === 'across' ? a.y < b.y : a.x > b.x;
  const holes = isTurned
    ? open.map((end) => (end === 'from' ? ('to' as const) : ('from' as const)))
    : [...open];
  return { direction, from: isTurned ? b : a, to: isTurned ? a : b, holes, text, governs };
}

function isSame(a: Distance, b: Distance): boolean {
  const far = (one: Point, other: Point) => Math.hypot(one.x - other.x, one.y - other.y) > sameMm;
  return !far(a.from, b.from) && !far(a.to, b.to);
}

interface Bare {
  from: Point;
  to: Point;
  open: ('from' | 'to')[];
}

function wholeLength({ lengthMm }: Part): Bare[] {
  return lengthMm === undefined ? [] : [{ from: { x: 0, y: 0 }, to: { x: lengthMm, y: 0 }, open: [] }];
}

/** To the first hole from the bottom edge or heel and from the left end, then to the next ones, as far as they are given. */
function distancesOf({ group, holes, isRead }: DrawnGroup, { widthMm, lengthMm }: Part): Bare[] {
  const placed = holes.filter((hole) => !isRead(hole));
  const first = leftmost(placed);
  if (!first) return [];
  const { center } = first;
  const upper = placed.find((hole) => hole.center.y > center.y + sameMm && isAt(hole.center.x, center.x));
  const next = nextAlong(placed, center);
  const at = (y: number): Point => ({ x: center.x, y });
  const topmost = upper?.center ?? center;
  const isFromRight = group.endFrom === 'right' && lengthMm !== undefined;
  const last = placed.reduce((most, hole) => (hole.center.x > most.center.x ? hole : most), first);
  return [
    { from: at(0), to: center, open: ['to'] },
    ...(upper ? [{ from: center, to: upper.center, open: ['from', 'to'] } satisfies Bare] : []),
    { from: topmost, to: at(widthMm), open: ['from'] },
    isFromRight
      ? { from: last.center, to: { x: lengthMm, y: last.center.y }, open: ['from'] }
      : { from: { x: 0, y: center.y }, to: center, open: ['to'] },
    ...(next ? [{ from: center, to: next.center, open: ['from', 'to'] } satisfies Bare] : []),
  ];
}

/** Of the leftmost holes the lowest. */
function leftmost(holes: readonly PlacedHole[]): PlacedHole | undefined {
  return [...holes].sort((a, b) => a.center.x - b.center.x || a.center.y - b.center.y)[0];
}

function nextAlong(holes: readonly PlacedHole[], { x, y }: Point): PlacedHole | undefined {
  return leftmost(holes.filter(({ center }) => isAt(center.y, y) && center.x > x + sameMm));
}

function isAt(a: number, b: number): boolean {
  return Math.abs(a - b) < sameMm;
}
