import { refuse } from '../inputError.js';
import { type CellValue, quoted } from '../quantity/cellValue.js';
import { readLength } from '../quantity/readLength.js';
import { mmPerFoot, type LengthUnit } from '../quantity/units.js';

/** What the bars of some sections come in. */
export interface BarLength {
  /** The beginning of the section as the list writes it, in capitals: `L`, `FB`; empty for all others. */
  section: string;
  lengthMm: number;
}

/** A bare 20 in an inch shop is 20 in, and hardly what was meant. */
const shortestBarMm = 1000;
const sectionFirst = /^([A-Za-zØ]{1,4})\s/;

/** Bar lengths such as `40 ft`, or by section `L 40 ft; FB 20 ft; 20 ft`. */
export function readBarLengths(cell: CellValue, argument: string, unit: LengthUnit): BarLength[] {
  const allowed = 'Write a length such as 20 ft, or by section: L 40 ft; FB 20 ft; 20 ft.';
  const parts = typeof cell === 'string' ? cell.split(';') : [cell];
  return parts.map((part) => {
    if (!/\d/.test(String(part))) {
      return refuse(argument, String(cell), `${quoted(part)} is not a length.`, allowed);
    }
    const section = sectionFirst.exec(String(part).trim())?.[1] ?? '';
    const value = typeof part === 'string' ? part.trim().slice(section.length).trim() : part;
    const lengthMm = readLength(value, argument, unit, 'distance');
    if (lengthMm < shortestBarMm)
      return refuse(argument, String(cell), `${quoted(part)} is too short for a bar.`, allowed);
    return { section: section.toUpperCase(), lengthMm };
  });
}

/** Common lengths of bars in the trade; common practice, no source. */
const usual: Record<LengthUnit, number> = { in: 20 * mmPerFoot, mm: 6000 };

/** The length of the bars a section is cut from, as the shop says it, else what is usual. */
export function barLengthMm(lengths: readonly BarLength[], section: string, unit: LengthUnit): number {
  return ownBarLengthMm(lengths, section) ?? usual[unit];
}

/** The length of the bars a section is cut from, where the shop says it. */
export function ownBarLengthMm(lengths: readonly BarLength[], section: string): number | undefined {
  const name = section.trim().toUpperCase();
  const letters = /^[A-ZØ]*/.exec(name)?.[0] ?? '';
  const own = lengths.find((each) => each.section !== '' && each.section === letters);
  return (own ?? lengths.find((each) => each.section === ''))?.lengthMm;
}
