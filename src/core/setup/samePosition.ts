import type { Position } from './way.js';

/** No gauge is set finer: settings nearer than this are one. Common practice, no source. */
export const sameMm = 0.01;

/** How far two positions are apart, by the gauge that is further off. */
export function apartMm(a: Position, b: Position): number {
  return Math.max(Math.abs(a.stopMm - b.stopMm), Math.abs(a.fenceMm - b.fenceMm));
}
