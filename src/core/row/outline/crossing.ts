import type { Contour } from './contour.js';
import type { Place } from './place.js';

type Segment = [Place, Place];

const roundingMm2 = 1e-6;

/** True where cuts meet before the part is whole: its outline runs over itself. Touching is not crossing. */
export function crossesItself(contour: Contour): boolean {
  const sides = sidesOf(contour);
  return sides.some((side, at) => sides.slice(at + 1).some((other) => cross(side, other)));
}

/** True where a circle around a place lies on the part, up to its outline. */
export function liesOn(contour: Contour, place: Place, radiusMm: number): boolean {
  const sides = sidesOf(contour);
  const crossed = sides.filter(([from, to]) => passesBefore(from, to, place)).length;
  return crossed % 2 === 1 && sides.every((side) => distanceMm(side, place) >= radiusMm * (1 - 1e-9));
}

export function polygonOf({ throat, operator }: Contour): Place[] {
  return [...throat, ...[...operator].reverse()];
}

function sidesOf(contour: Contour): Segment[] {
  const places = polygonOf(contour);
  return places.flatMap((from, at): Segment[] => {
    const to = places[(at + 1) % places.length];
    return to ? [[from, to]] : [];
  });
}

function cross([a, b]: Segment, [c, d]: Segment): boolean {
  return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
}

/** Which way three places turn: 1, -1, or 0 in a line. */
function turn(a: Place, b: Place, c: Place): number {
  const area =
    (b.alongMm - a.alongMm) * (c.acrossMm - a.acrossMm) - (b.acrossMm - a.acrossMm) * (c.alongMm - a.alongMm);
  return Math.abs(area) < roundingMm2 ? 0 : Math.sign(area);
}

/** Whether a side passes a place on the stop's side of it. */
function passesBefore(from: Place, to: Place, { alongMm, acrossMm }: Place): boolean {
  if (from.acrossMm > acrossMm === to.acrossMm > acrossMm) return false;
  const share = (acrossMm - from.acrossMm) / (to.acrossMm - from.acrossMm);
  return from.alongMm + share * (to.alongMm - from.alongMm) < alongMm;
}

function distanceMm([from, to]: Segment, { alongMm, acrossMm }: Place): number {
  const [x, y] = [to.alongMm - from.alongMm, to.acrossMm - from.acrossMm];
  const lengthMm2 = x * x + y * y;
  const along =
    lengthMm2 === 0 ? 0 : ((alongMm - from.alongMm) * x + (acrossMm - from.acrossMm) * y) / lengthMm2;
  const share = Math.min(Math.max(along, 0), 1);
  return Math.hypot(alongMm - from.alongMm - share * x, acrossMm - from.acrossMm - share * y);
}
