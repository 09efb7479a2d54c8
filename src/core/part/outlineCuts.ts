import { cornerOf, endX, sideOf, type SideNumber } from './outlineBase.js';
import type { Clip, End, Notch, OutlineInput, OutlineProblem, Side } from './outlineInput.js';
import type { Cause, Edge } from './outline.js';
import type { Point } from './point.js';
import { toleranceMm } from './tolerance.js';

/** A clip or notch: its corners counter-clockwise around the face, at the start of a side or within it. */
export interface Cut {
  readonly cause: Cause;
  readonly kind: Edge['kind'];
  readonly side: SideNumber;
  readonly atCorner: boolean;
  readonly path: readonly Point[];
}

/** All clips and notches with their corners, or the first that cannot be in this face. */
export function cutsOf(input: OutlineInput): Cut[] | OutlineProblem {
  const cuts: Cut[] = [];
  for (const [at, clip] of (input.clips ?? []).entries()) {
    cuts.push(clipCut(input, clip, { is: 'clip', number: at + 1 }));
  }
  for (const [at, notch] of (input.notches ?? []).entries()) {
    const cut = notchCut(input, atCorner(input, notch), { is: 'notch', number: at + 1 });
    if ('problem' in cut) return cut;
    cuts.push(cut);
  }
  return cuts;
}

function clipCut(input: OutlineInput, clip: Clip, cause: Cause): Cut {
  const path = cornerPath(input, clip, clip.alongMm, clip.acrossMm);
  return { cause, kind: clip.kind, side: cornerOf(clip.end, clip.side), atCorner: true, path };
}

/** A rectangle in an edge that begins exactly at its end is a notch at the corner. */
function atCorner(input: OutlineInput, notch: Notch): Notch {
  const { place, widthMm, depthMm } = notch;
  if (notch.shape === 'vee' || place.at === 'corner') return notch;
  if (place.at === 'edge') {
    const end = touchedEnd(input, place.side, place.centerMm, widthMm / 2);
    return end ? { ...notch, place: { at: 'corner', end, side: place.side } } : notch;
  }
  const side = touchedSide(input, place.centerMm, widthMm / 2);
  if (!side || (input[place.end].miter?.rad ?? 0) > 0) return notch;
  return { ...notch, place: { at: 'corner', end: place.end, side }, widthMm: depthMm, depthMm: widthMm };
}

function touchedEnd(input: OutlineInput, side: Side, centerMm: number, halfMm: number): End | undefined {
  const y = edgeY(input, side);
  if (isAt(centerMm - halfMm, endX(input, 'left', y))) return 'left';
  return isAt(centerMm + halfMm, endX(input, 'right', y)) ? 'right' : undefined;
}

function touchedSide({ widthMm }: OutlineInput, centerMm: number, halfMm: number): Side | undefined {
  if (isAt(centerMm - halfMm, 0)) return 'bottom';
  return isAt(centerMm + halfMm, widthMm) ? 'top' : undefined;
}

function isAt(aMm: number, bMm: number): boolean {
  return Math.abs(aMm - bMm) <= toleranceMm;
}

function notchCut(input: OutlineInput, notch: Notch, cause: Cause): Cut | OutlineProblem {
  const { place, depthMm, kind } = notch;
  if (place.at === 'corner') return cornerNotch(input, notch, place.end, place.side, cause);
  const throughMm = place.at === 'edge' ? input.widthMm : input.lengthMm;
  if (depthMm >= throughMm - toleranceMm) {
    return { problem: 'cut too deep', cause, neededMm: depthMm, availableMm: throughMm };
  }
  if (place.at === 'edge') {
    const path = edgePath(input, notch, place.side, place.centerMm);
    return { cause, kind, side: sideOf[place.side], atCorner: false, path };
  }
  return endNotch(input, notch, place.end, place.centerMm, cause);
}

function cornerNotch(
  input: OutlineInput,
  { shape, widthMm, depthMm, kind }: Notch,
  end: End,
  side: Side,
  cause: Cause,
): Cut | OutlineProblem {
  const cut = { cause, kind, side: cornerOf(end, side), atCorner: true };
  const path = cornerPath(input, { end, side }, widthMm, depthMm);
  if (shape === 'vee') return { ...cut, path };
  const [onEnd, onEdge] = path[0].y === edgeY(input, side) ? [path[1], path[0]] : path;
  const cornerX = endX(input, end, onEdge.y);
  const inward = end === 'left' ? onEnd.x - cornerX : cornerX - onEnd.x;
  // On the long point of a miter, a notch must be wider than the miter is there, or it has no corner in the steel.
  if (widthMm <= inward + toleranceMm) {
    return { problem: 'cut off the edge', cause, neededMm: inward, availableMm: widthMm };
  }
  return { ...cut, path: [path[0], { x: onEdge.x, y: onEnd.y }, path[1]] };
}

/** Where a cut at a corner begins and ends, counter-clockwise around the face: on its end and on its long edge. */
function cornerPath(
  input: OutlineInput,
  { end, side }: { end: End; side: Side },
  alongMm: number,
  acrossMm: number,
): [Point, Point] {
  const y = edgeY(input, side);
  const onEdge = { x: endX(input, end, y) + (end === 'left' ? alongMm : -alongMm), y };
  const endY = side === 'bottom' ? acrossMm : y - acrossMm;
  const onEnd = { x: endX(input, end, endY), y: endY };
  return (side === 'bottom') === (end === 'left') ? [onEnd, onEdge] : [onEdge, onEnd];
}

function edgePath(input: OutlineInput, notch: Notch, side: Side, centerMm: number): Point[] {
  const { shape, widthMm, depthMm } = notch;
  const y = edgeY(input, side);
  // Counter-clockwise is to the right on the bottom and to the left on the top.
  const half = side === 'bottom' ? widthMm / 2 : -widthMm / 2;
  const floorY = side === 'bottom' ? depthMm : y - depthMm;
  const [from, to] = [centerMm - half, centerMm + half];
  const floor = shape === 'vee' ? [centerMm] : [from, to];
  return [{ x: from, y }, ...floor.map((x) => ({ x, y: floorY })), { x: to, y }];
}

function endNotch(
  input: OutlineInput,
  { shape, widthMm, depthMm, kind }: Notch,
  end: End,
  centerMm: number,
  cause: Cause,
): Cut | OutlineProblem {
  const half = end === 'right' ? widthMm / 2 : -widthMm / 2;
  const [from, to] = [centerMm - half, centerMm + half].map((y) => ({ x: endX(input, end, y), y }));
  if (!from || !to) throw new RangeError('A notch has two corners in its end.');
  const middleX = endX(input, end, centerMm);
  const leanMm = Math.abs(from.x - to.x) / 2;
  // On a miter the floor must lie in the steel at both its ends.
  if (shape === 'rectangle' && depthMm <= leanMm + toleranceMm) {
    return { problem: 'cut off the edge', cause, neededMm: leanMm, availableMm: depthMm };
  }
  const floorX = middleX + (end === 'left' ? depthMm : -depthMm);
  const floor = shape === 'vee' ? [centerMm] : [from.y, to.y];
  const path = [from, ...floor.map((y) => ({ x: floorX, y })), to];
  return { cause, kind, side: sideOf[end], atCorner: false, path };
}

function edgeY({ widthMm }: OutlineInput, side: Side): number {
  return side === 'bottom' ? 0 : widthMm;
}
