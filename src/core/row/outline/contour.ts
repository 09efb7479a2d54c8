import type { Place, Side } from './place.js';

/** The outline of a part in mm: its two long edges, each from the stop to the far end, with all that is cut off. */
export interface Contour {
  throat: Place[];
  operator: Place[];
}

/** The ends of a part: how far a cut leans from square at each, and the edge that keeps the whole length. */
export interface Ends {
  lengthMm: number;
  widthMm: number;
  stopRad: number;
  farRad: number;
  long: Side;
}

export type End = 'stop' | 'far';

/** A corner that is cut off. */
export interface ClippedCorner {
  end: End;
  side: Side;
  alongMm: number;
  acrossMm: number;
}

/** A notch in a long edge. */
export interface PlacedNotch {
  side: Side;
  centreMm: number;
  widthMm: number;
  depthMm: number;
}

/** How far an end lies from the stop, at a place across the part: a miter moves it by `across · tan θ`. */
export function endAlongMm(ends: Ends, end: End, acrossMm: number): number {
  const fromLongMm = ends.long === 'throat' ? acrossMm : ends.widthMm - acrossMm;
  return end === 'stop'
    ? fromLongMm * Math.tan(ends.stopRad)
    : ends.lengthMm - fromLongMm * Math.tan(ends.farRad);
}

/** How far an edge lies from the one at the throat. */
export function edgeAcrossMm({ widthMm }: Pick<Ends, 'widthMm'>, side: Side): number {
  return side === 'throat' ? 0 : widthMm;
}

export function contourOf(
  ends: Ends,
  corners: readonly ClippedCorner[],
  notches: readonly PlacedNotch[],
): Contour {
  const edge = (side: Side) => [
    ...cornerPlaces(ends, 'stop', side, corners),
    ...notches.filter((notch) => notch.side === side).flatMap((notch) => notchPlaces(ends, notch)),
    ...cornerPlaces(ends, 'far', side, corners).reverse(),
  ];
  return { throat: edge('throat'), operator: edge('operator') };
}

/** A corner from its end to its edge: one place, or the two of a corner cut off. */
function cornerPlaces(ends: Ends, end: End, side: Side, corners: readonly ClippedCorner[]): Place[] {
  const acrossMm = edgeAcrossMm(ends, side);
  const corner = { alongMm: endAlongMm(ends, end, acrossMm), acrossMm };
  const clip = corners.find((each) => each.end === end && each.side === side);
  if (!clip) return [corner];
  const cutMm = side === 'throat' ? clip.acrossMm : ends.widthMm - clip.acrossMm;
  const inward = end === 'stop' ? clip.alongMm : -clip.alongMm;
  return [
    { alongMm: endAlongMm(ends, end, cutMm), acrossMm: cutMm },
    { alongMm: corner.alongMm + inward, acrossMm },
  ];
}

function notchPlaces(ends: Ends, { side, centreMm, widthMm, depthMm }: PlacedNotch): Place[] {
  const edgeMm = edgeAcrossMm(ends, side);
  const bottomMm = side === 'throat' ? depthMm : ends.widthMm - depthMm;
  const [fromMm, toMm] = [centreMm - widthMm / 2, centreMm + widthMm / 2];
  return [
    { alongMm: fromMm, acrossMm: edgeMm },
    { alongMm: fromMm, acrossMm: bottomMm },
    { alongMm: toMm, acrossMm: bottomMm },
    { alongMm: toMm, acrossMm: edgeMm },
  ];
}
