import { type ClearanceRange, clearanceRange } from './clearanceRange.js';
import type { BendLine, Part, PlacedHole } from './part.js';

/** A hole and a bend line, in mm: below 0 the line cuts the hole. */
export interface HoleToBend {
  readonly rim: ClearanceRange;
  readonly center: ClearanceRange;
}

/**
 * Measures every hole against every bend line of its face, and hands each pair to `visit`.
 *
 * Formula: clearance of the hole, and of its center, from the line.
 * @param part the holes and bend lines
 * @param visit takes each pair with its clearances in mm, from the line itself (the bend radius is not taken off)
 * @returns how many pairs were visited
 * Valid for straight bends. Throws what `visit` throws.
 * @example bendClearances(part, (hole, bend, { rim }) => check(bend.insideRadiusMm, rim.least.distance))
 * Source: plane geometry.
 */
export function bendClearances(
  { holes, bends }: Pick<Part, 'holes' | 'bends'>,
  visit: (hole: PlacedHole, bend: BendLine, clearances: HoleToBend) => void,
): number {
  let visited = 0;
  for (const bend of bends) {
    const line = { shape: { core: [bend.from, bend.to], radius: 0 } };
    for (const hole of holes) {
      if (hole.face !== bend.face) continue;
      const center = { shape: { core: [hole.center], radius: 0 }, ...(hole.free && { free: hole.free }) };
      visit(hole, bend, { rim: clearanceRange(hole, line), center: clearanceRange(center, line) });
      visited++;
    }
  }
  return visited;
}
