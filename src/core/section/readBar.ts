import { formatLength } from '../quantity/formatLength.js';
import { readDimensions, requireBelievable, type SectionSource } from './dimension.js';
import type { Section, SectionText } from './section.js';

/** `RB 1`, `RD 25`, `SQ 3/4`: a solid bar by its one dimension. */
export function readBar(parts: string[], kind: 'round' | 'square', source: SectionSource): SectionText {
  const dimensions = readDimensions(parts, 1, source);
  const { valuesMm, unit, lengthMm } = dimensions;
  const [sizeMm = 0] = valuesMm;
  requireBelievable(sizeMm, 'bar', dimensions, source);
  const size = formatLength(sizeMm, unit);
  const section: Section =
    kind === 'round'
      ? { kind, designation: `RB${size}`, diameterMm: sizeMm }
      : { kind, designation: `SQ${size}`, sideMm: sizeMm };
  return lengthMm === undefined ? { section } : { section, lengthMm };
}
