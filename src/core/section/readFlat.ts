import { formatLength } from '../quantity/formatLength.js';
import { readDimensions, requireBelievable, type SectionSource } from './dimension.js';
import type { FlatSection, SectionText } from './section.js';

/** `PL1/2X6`, `FB 10x50`: thickness and width in either order, the smaller is the thickness. */
export function readFlat(parts: string[], form: FlatSection['form'], source: SectionSource): SectionText {
  const { valuesMm, unit, lengthMm } = readDimensions(parts, 2, source);
  const [thicknessMm, widthMm] = [Math.min(...valuesMm), Math.max(...valuesMm)];
  requireBelievable(widthMm, form === 'bar' ? 'barWidth' : 'plateWidth', unit, source);
  requireBelievable(thicknessMm, 'thickness', unit, source);
  const prefix = form === 'bar' ? 'FB' : 'PL';
  const designation = `${prefix}${formatLength(thicknessMm, unit)}X${formatLength(widthMm, unit)}`;
  const section = { kind: 'flat', designation, form, thicknessMm, widthMm } as const;
  return lengthMm === undefined ? { section } : { section, lengthMm };
}
