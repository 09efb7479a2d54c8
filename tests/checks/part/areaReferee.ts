// What is left of a face, by a polygon clipper: the uncut face less each cut. It starts from the input alone.
import type { MultiPolygon, Pair, Ring } from 'polygon-clipping';
import type { Cause } from '../../../src/core/part/outline.js';
import type { Clip, End, Notch, OutlineInput, Side } from '../../../src/core/part/outlineInput.js';
import { areaOf, shared, without } from './clipper.js';

/** A clip or notch: what it takes away (reaching out of the face), and the corners that must lie in the steel. */
export interface CutArea {
  cause: Cause;
  area: Ring;
  /** Its places on the boundary, which must lie within one side each. */
  onSides: { side: 'bottom' | 'top' | 'left' | 'right'; place: Pair }[];
  within: Pair[];
}

/** Farther than any part is large. */
const outside = 3000;

export function endAt(input: OutlineInput, end: End, y: number): number {
  const { miter } = input[end];
  const inward = miter ? Math.tan(miter.rad) * (miter.long === 'bottom' ? y : input.widthMm - y) : 0;
  return end === 'left' ? inward : input.lengthMm - inward;
}

/** The uncut face, counter-clockwise from the left of the bottom. */
export function uncut(input: OutlineInput): [Pair, Pair, Pair, Pair] {
  const { widthMm } = input;
  return [
    [endAt(input, 'left', 0), 0],
    [endAt(input, 'right', 0), 0],
    [endAt(input, 'right', widthMm), widthMm],
    [endAt(input, 'left', widthMm), widthMm],
  ];
}

export function cutAreas(input: OutlineInput): CutArea[] {
  return [
    ...(input.clips ?? []).map((clip, at) => clipArea(input, clip, { is: 'clip', number: at + 1 })),
    ...(input.notches ?? []).map((notch, at) => notchArea(input, notch, { is: 'notch', number: at + 1 })),
  ];
}

/** True where the cuts leave one piece with the cuts inside it: each within the face, no two with a common area. */
export function fits(input: OutlineInput): boolean {
  const [a, b, c, d] = uncut(input);
  if (b[0] - a[0] < 0 || c[0] - d[0] < 0) return false;
  const cuts = cutAreas(input);
  if (!cuts.every((cut) => liesIn(input, cut))) return false;
  const removed = cuts.map(({ area }) => shared([[a, b, c, d]], [area]));
  const apart = removed.every((one, at) =>
    removed.slice(at + 1).every((other) => areaOf(shared(one, other)) === 0),
  );
  return apart && left(input).length === 1;
}

/** The face less its cuts. */
export function left(input: OutlineInput): MultiPolygon {
  return without(
    [uncut(input)],
    cutAreas(input).map(({ area }) => [area]),
  );
}

function liesIn(input: OutlineInput, { onSides, within }: CutArea): boolean {
  const { widthMm } = input;
  const inside = ([x, y]: Pair) =>
    y > 0 && y < widthMm && x > endAt(input, 'left', y) && x < endAt(input, 'right', y);
  return within.every(inside) && onSides.every(({ side, place: [x, y] }) => liesOn(input, side, x, y));
}

function liesOn(input: OutlineInput, side: Side | End, x: number, y: number): boolean {
  if (side === 'left' || side === 'right') return y > 0 && y < input.widthMm;
  return x > endAt(input, 'left', y) && x < endAt(input, 'right', y);
}

function clipArea(input: OutlineInput, { end, side, alongMm, acrossMm }: Clip, cause: Cause): CutArea {
  const cornerY = side === 'bottom' ? 0 : input.widthMm;
  const cornerX = endAt(input, end, cornerY);
  const endY = side === 'bottom' ? acrossMm : cornerY - acrossMm;
  const onEnd: Pair = [endAt(input, end, endY), endY];
  const onEdge: Pair = [cornerX + (end === 'left' ? alongMm : -alongMm), cornerY];
  const middle: Pair = [(onEnd[0] + onEdge[0]) / 2, (onEnd[1] + onEdge[1]) / 2];
  return {
    cause,
    area: onward(
      [through(middle, onEnd), through(middle, onEdge)],
      [cornerX - middle[0], cornerY - middle[1]],
    ),
    onSides: [
      { side: end, place: onEnd },
      { side, place: onEdge },
    ],
    within: [],
  };
}

/** Far outside, on the line from one point through another. */
function through([fromX, fromY]: Pair, [x, y]: Pair): Pair {
  const scale = outside / Math.hypot(x - fromX, y - fromY);
  return [fromX + (x - fromX) * scale, fromY + (y - fromY) * scale];
}

function notchArea(input: OutlineInput, notch: Notch, cause: Cause): CutArea {
  const { place, shape, widthMm, depthMm, kind } = notch;
  if (place.at === 'corner') {
    if (shape === 'rectangle') return cornerArea(input, notch, place.end, place.side, cause);
    return clipArea(input, { ...place, alongMm: widthMm, acrossMm: depthMm, kind }, cause);
  }
  if (place.at === 'edge') return edgeArea(input, notch, place.side, place.centerMm, cause);
  return endArea(input, notch, place.end, place.centerMm, cause);
}

function cornerArea(input: OutlineInput, notch: Notch, end: End, side: Side, cause: Cause): CutArea {
  const cornerY = side === 'bottom' ? 0 : input.widthMm;
  const x = endAt(input, end, cornerY) + (end === 'left' ? notch.widthMm : -notch.widthMm);
  const y = side === 'bottom' ? notch.depthMm : cornerY - notch.depthMm;
  const outX = end === 'left' ? -outside : outside;
  const outY = side === 'bottom' ? -outside : outside;
  return {
    cause,
    area: [
      [x, y],
      [outX, y],
      [outX, outY],
      [x, outY],
    ],
    onSides: [
      { side, place: [x, cornerY] },
      { side: end, place: [endAt(input, end, y), y] },
    ],
    within: [[x, y]],
  };
}

function edgeArea(input: OutlineInput, notch: Notch, side: Side, center: number, cause: Cause): CutArea {
  const edgeY = side === 'bottom' ? 0 : input.widthMm;
  const floorY = side === 'bottom' ? notch.depthMm : edgeY - notch.depthMm;
  const [from, to] = [center - notch.widthMm / 2, center + notch.widthMm / 2];
  const floor: Pair[] = notch.shape === 'vee' ? [[center, floorY]] : [from, to].map((x): Pair => [x, floorY]);
  return {
    cause,
    area: outward(floor, [from, edgeY], [to, edgeY]),
    onSides: [from, to].map((x) => ({ side, place: [x, edgeY] })),
    within: floor,
  };
}

function endArea(input: OutlineInput, notch: Notch, end: End, center: number, cause: Cause): CutArea {
  const [from, to] = [center - notch.widthMm / 2, center + notch.widthMm / 2];
  const floorX = endAt(input, end, center) + (end === 'left' ? notch.depthMm : -notch.depthMm);
  const floor: Pair[] = notch.shape === 'vee' ? [[floorX, center]] : [from, to].map((y): Pair => [floorX, y]);
  const mouth = [from, to].map((y): Pair => [endAt(input, end, y), y]);
  return {
    cause,
    area: outward(floor, mouth[0] ?? [0, 0], mouth[1] ?? [0, 0]),
    onSides: mouth.map((place) => ({ side: end, place })),
    within: floor,
  };
}

/** From the floor of a notch through its mouth and on. */
function outward(floor: Pair[], from: Pair, to: Pair): Ring {
  const [first, last] = [floor[0] ?? from, floor.at(-1) ?? to];
  const ring = [through(first, from), ...floor, through(last, to)];
  return floor.length > 1
    ? ring
    : onward(ring, [from[0] - first[0] + to[0] - first[0], from[1] - first[1] + to[1] - first[1]]);
}

/** Closed far outside: from the last place and from the first, at right angles to the line between them, outward. */
function onward(ring: Ring, [outX, outY]: Pair): Ring {
  const [[ax, ay], [bx, by]] = [ring[0] ?? [0, 0], ring.at(-1) ?? [0, 0]];
  const scale = outside / Math.hypot(bx - ax, by - ay);
  const [x, y] = [(by - ay) * scale, (ax - bx) * scale];
  const sign = Math.sign(outX * x + outY * y);
  return [...ring, [bx + sign * x, by + sign * y], [ax + sign * x, ay + sign * y]];
}
