/**
 * The corners of square and rectangular tubes, as multiples of the wall: EN 10219-2 for walls to 6 mm, and the
 * corners by which AISC's table of tubes gives its weights (both from memory).
 */
export const outerCornerWalls = 2;
export const innerCornerWalls = 1;

/** The wall in mm over which EN 10219-2 has larger corners. */
const largerCornersOverMm = 6;

/** A caution where the corners of metric tubes are larger than ours. */
export function cornerCaution(thicknessMm: number): string[] {
  if (thicknessMm <= largerCornersOverMm) return [];
  return ['Walls over 6 mm have larger corners in EN 10219-2: the area is then up to 2% less.'];
}
