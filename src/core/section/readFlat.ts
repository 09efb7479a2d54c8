import { formatLength } from '../quantity/formatLength.js';
import { readDimensions, requireBelievable, type SectionSource } from './dimension.js';
import type { FlatSection, SectionText } from './section.js';

/** `PL1/2X6`, `FB 10x50`: thickness and width in either order, the smaller is the thickness. */
export function readFlat(parts: string[], form: FlatSection['form'], source: SectionSource): SectionText {
  const dimensions = readDimensions(parts, 2, source);
  const { valuesMm, unit, lengthMm } = dimensions;
  const [thicknessMm, widthMm] = [Math.min(...valuesMm), Math.max(...valuesMm)];
  requireBelievable(widthMm, form === 'bar' ? 'barWidth' : 'plateWidth', dimensions, source);
  requireBelievable(thicknessMm, 'thickness', dimensions, source);
  const prefix = form === 'bar' ? 'FB' : 'PL';
  const designation = `${prefix}${formatLength(thicknessMm, unit)}X${formatLength(widthMm, unit)}`;
  const section = { kind: 'flat', designation, form, thicknessMm, widthMm } as const;
  return lengthMm === undefined ? { section } : { section, lengthMm };
}
