import { refuse } from '../inputError.js';
import { type CellValue, quoted } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { mmPerFoot, type LengthUnit } from '../quantity/units.js';
import { forSection, type ForSection, readBySection } from './bySection.js';

/** A bare 20 in an inch shop is 20 in, and hardly what was meant. */
const shortestBarMm = 1000;

/** Bar lengths such as `40 ft`, or by section `L 40 ft; FB 20 ft; 20 ft`. */
export function readBarLengths(cell: CellValue, argument: string, unit: LengthUnit): ForSection[] {
  const allowed = 'Write a length such as 20 ft, or by section: L 40 ft; FB 20 ft; 20 ft.';
  const read = (part: CellValue) => {
    const lengthMm = readLength(part, argument, unit, 'distance');
    if (lengthMm >= shortestBarMm) return lengthMm;
    return refuse(argument, String(cell), `${quoted(part)} is too short for a bar.`, allowed);
  };
  return readBySection(cell, { argument, allowed, read });
}

/** Common lengths of bars in the trade; common practice, no source. */
const usual: Record<LengthUnit, number> = { in: 20 * mmPerFoot, mm: 6000 };

/** The length of the bars a section is cut from, as the shop says it, else what is usual. */
export function barLengthMm(lengths: readonly ForSection[], section: string, unit: LengthUnit): number {
  return forSection(lengths, section) ?? usual[unit];
}
