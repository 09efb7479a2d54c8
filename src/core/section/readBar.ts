import { refuse } from '../inputError.js';
import { quoted } from '../quantity/cellValue.js';
import { formatLength } from '../quantity/formatLength.js';
import { leastTrailingMm, readDimensions, requireBelievable, type SectionSource } from './dimension.js';
import type { Section, SectionText } from './section.js';

/**
 * `Ø60.3x3.2`: the mark of a diameter alone may be a bar or a tube. A second size too short for a piece is the wall;
 * one that may be either is refused. False for a bar.
 */
export function isMarkedTube(parts: string[], source: SectionSource): boolean {
  const [first, second] = parts;
  if (first === undefined || second === undefined || parts.length > 3) return false;
  const { valuesMm } = readDimensions([first, second], 2, source);
  const [diameterMm = 0, secondMm = 0] = valuesMm;
  if (secondMm >= diameterMm / 2) return false;
  if (secondMm < leastTrailingMm || parts.length === 3) return true;
  const typed = quoted(source.text);
  const problem = `${typed} may be a tube with a wall of ${second} or a bar ${second} long.`;
  return refuse(
    source.argument,
    source.text,
    problem,
    `Write CHS${first}x${second} or RD${first}x${second}.`,
  );
}

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
