import type { Range } from '../check/range.js';
import type { LengthUnit } from '../quantity/units.js';
import { facesOf } from './job/faces.js';
import { facesOfLeg } from './layout/facesOfLeg.js';
import { pieceEdges } from './pieceEdges.js';
import type { ReadRow } from './job/readyRow.js';

export type Mitered = Pick<
  ReadRow,
  'section' | 'lengthMm' | 'miterLeftRad' | 'miterRightRad' | 'longSide' | 'miterLeg'
>;

/**
 * The shortest side of a part in mm, on which a shear holds it: its length, less what its miters take from one side.
 * A range where the row does not say which sides are long, or which leg is mitered; undefined without a length. It is not
 * above 0 where the miters meet. Source: geometry.
 */
export function shortestSide(row: Mitered, unit: LengthUnit): Range | undefined {
  return pieceEdges(row, miteredWidths(row, unit))?.short;
}

/** The widths of the sides that may be mitered; 0 for solid bars, which are mitered by a saw. */
export function miteredWidths({ section, miterLeg }: Mitered, unit: LengthUnit): number[] {
  const isBoth = section.kind === 'angle' && miterLeg === 'both';
  const faces = isBoth ? facesOf(section) : facesOfLeg(section, miterLeg, unit);
  const widths = faces.map(({ widthMm }) => widthMm);
  if (widths.length === 0) return [0];
  return isBoth ? [Math.max(...widths)] : widths;
}
