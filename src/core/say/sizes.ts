import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';

/** Sizes with their unit: `1/2 in`, `14 × 1/2 in`. */
export function sizes(sizesMm: readonly number[], unit: LengthUnit): string {
  return `${sizesMm.map((mm) => formatLength(mm, unit)).join(' × ')} ${unit}`;
}

/** A size with its unit: `1/2 in`. */
export function size(mm: number, unit: LengthUnit): string {
  return sizes([mm], unit);
}
