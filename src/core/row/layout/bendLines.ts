import type { Point } from '../../part/point.js';
import type { PartPlace } from '../job/rowJob.js';

/** A line a plate is bent along, with what it runs parallel to. */
export interface PlacedBend {
  /** Across the part, so that it is so far from an end; or along it, so far from an edge. */
  runs: 'across' | 'along';
  /** From the left end, or from the bottom edge. */
  atMm: number;
  from: Point;
  to: Point;
}

/** Bend lines where a row gives their places: each parallel to the end or edge it is given from. */
export function bendLinesOf(
  places: readonly PartPlace[],
  { lengthMm, widthMm }: { lengthMm: number; widthMm: number },
): PlacedBend[] {
  return places.flatMap((place): PlacedBend[] => {
    if (place.at === 'corner' || place.fromMm === undefined) return [];
    if (place.at === 'end') {
      const atMm = place.end === 'left' ? place.fromMm : lengthMm - place.fromMm;
      return [{ runs: 'across', atMm, from: { x: atMm, y: 0 }, to: { x: atMm, y: widthMm } }];
    }
    const atMm = place.side === 'top' ? widthMm - place.fromMm : place.fromMm;
    return [{ runs: 'along', atMm, from: { x: 0, y: atMm }, to: { x: lengthMm, y: atMm } }];
  });
}
