import { refuse } from '../inputError.js';
import { type CellValue, quoted } from '../quantity/cellValue.js';

/** A length that holds for some sections. */
export interface ForSection {
  /** The beginning of the section as the list writes it, in capitals: `L`, `FB`; empty for all others. */
  section: string;
  lengthMm: number;
}

const sectionFirst = /^([A-Za-zØ]{1,4})\s/;

/** Lengths such as `40 ft`, or by section `L 40 ft; FB 20 ft; 20 ft`. */
export function readBySection(
  cell: CellValue,
  about: { argument: string; allowed: string; read: (part: CellValue) => number },
): ForSection[] {
  const { argument, allowed, read } = about;
  const parts = typeof cell === 'string' ? cell.replace(/;\s*$/, '').split(';') : [cell];
  return parts.map((part) => {
    if (!/\d/.test(String(part))) {
      return refuse(argument, String(cell), `${quoted(part)} is not a length.`, allowed);
    }
    const section = sectionFirst.exec(String(part).trim())?.[1] ?? '';
    const value = typeof part === 'string' ? part.trim().slice(section.length).trim() : part;
    return { section: section.toUpperCase(), lengthMm: read(value) };
  });
}

/** The length for a section by its name; undefined where none is for it. */
export function forSection(lengths: readonly ForSection[], section: string): number | undefined {
  const name = section.trim().toUpperCase();
  const letters = /^[A-ZØ]*/.exec(name)?.[0] ?? '';
  const own = lengths.find((each) => each.section !== '' && each.section === letters);
  return (own ?? lengths.find((each) => each.section === ''))?.lengthMm;
}
