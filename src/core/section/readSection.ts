import { refuse } from '../inputError.js';
import { type CellValue, quoted } from '../quantity/cellValue.js';
import type { LengthUnit } from '../quantity/units.js';
import { readAnySection } from './readAnySection.js';
import { isSawn, type SawnSection, type SectionText } from './section.js';

const plurals: Record<SawnSection['kind'], string> = {
  tube: 'tubes',
  'round tube': 'tubes',
  tee: 'tees',
  beam: 'beams',
};

/**
 * Reads a section that a press works or that is checked with it: flat, angle, channel, round, square, as
 * {@link readAnySection} reads them.
 *
 * @param value the cell
 * @param argument what the cell is, for the refusal
 * @param unit the shop's unit, for numbers without one; fractions and inch marks mean inches whatever the shop
 * @returns the section, and the length in mm where one trails
 * Throws as {@link readAnySection} does, and `invalid` for tubes, tees and beams: they are sawn.
 * @example readSection("PL1/2X6X1'-0", 'Section', 'in').lengthMm // 304.8
 * Source: designations as in AISC's naming convention for shapes; the rest is common practice, no source.
 */
export function readSection(value: CellValue, argument: string, unit: LengthUnit): SectionText {
  const { section, lengthMm } = readAnySection(value, argument, unit);
  if (isSawn(section)) {
    const problem = `${quoted(value)} is sawn: no press station cuts ${plurals[section.kind]}.`;
    return refuse(argument, String(value), problem, 'Leave it out of what the press makes.');
  }
  return lengthMm === undefined ? { section } : { section, lengthMm };
}
