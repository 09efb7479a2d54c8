import { formatSizes } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';

/** A punched hole. A slot has round ends; its length is measured over all. */
export type Hole =
  | { shape: 'round'; diameterMm: number }
  | { shape: 'slot'; widthMm: number; lengthMm: number }
  | { shape: 'square'; sideMm: number }
  | { shape: 'rectangle'; widthMm: number; lengthMm: number }
  | { shape: 'hexagon'; acrossFlatsMm: number };

/** The smallest dimension of the hole in mm: diameter, slot width, shorter side, width across flats. */
export function leastDimensionMm(hole: Hole): number {
  switch (hole.shape) {
    case 'round':
      return hole.diameterMm;
    case 'square':
      return hole.sideMm;
    case 'hexagon':
      return hole.acrossFlatsMm;
    default:
      return Math.min(hole.widthMm, hole.lengthMm);
  }
}

/** The two sides of the rectangle around a hole in mm, the shorter first: of a round hole its diameter twice. */
export function sidesOf(hole: Hole): { widthMm: number; lengthMm: number } {
  const widthMm = leastDimensionMm(hole);
  const oblong = hole.shape === 'slot' || hole.shape === 'rectangle';
  return { widthMm, lengthMm: oblong ? Math.max(hole.widthMm, hole.lengthMm) : widthMm };
}

/** The largest dimension of the punch in mm: what must fit the punch body and the die. */
export function punchDiagonalMm(hole: Hole): number {
  switch (hole.shape) {
    case 'round':
      return hole.diameterMm;
    case 'slot':
      return hole.lengthMm;
    case 'square':
      return Math.SQRT2 * hole.sideMm;
    case 'rectangle':
      return Math.hypot(hole.widthMm, hole.lengthMm);
    case 'hexagon':
      return (2 / Math.sqrt(3)) * hole.acrossFlatsMm;
  }
}

/** The hole with its unit, as a sentence names it: `Ø9/16 in hole`, `slot 13/16 × 1-7/8 in`. */
export function nameHole(hole: Hole, unit: LengthUnit): string {
  const described = describeHole(hole, unit);
  // Sizes that were written in the other unit name it themselves.
  const size = described.endsWith(' mm') ? described : `${described} ${unit}`;
  return hole.shape === 'slot' || hole.shape === 'rectangle' ? size : `${size} hole`;
}

/** The hole as it is echoed in notes: `Ø13/16`, `slot 13/16 × 1-7/8`, `square 3/4`. */
export function describeHole(hole: Hole, unit: LengthUnit): string {
  switch (hole.shape) {
    case 'round':
      return `Ø${formatSizes([hole.diameterMm], unit)}`;
    case 'square':
      return `square ${formatSizes([hole.sideMm], unit)}`;
    case 'hexagon':
      return `hexagon ${formatSizes([hole.acrossFlatsMm], unit)}`;
    default:
      return `${hole.shape} ${formatSizes([hole.widthMm, hole.lengthMm], unit)}`;
  }
}
