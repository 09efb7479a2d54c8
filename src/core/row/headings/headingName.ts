import type { CellValue } from '../../quantity/cellValue.js';
import { nameKey } from '../../shop/table.js';

/** A heading as names are compared, and the unit that it states. */
export interface HeadingName {
  /** All of it, without what only stands around it. */
  whole: string;
  /** Without its unit. */
  bare: string;
  unit?: string | undefined;
  /** Nothing but a space parts the unit: it is one only behind the name of a length. */
  isLoose?: boolean;
}

const longestHeading = 60;
const units = 'mm|cm|m|in|inch|inches|ft|feet';
/** `Length (mm)`, `Edge, in.`. */
const unitInBrackets = new RegExp(String.raw`^([^([,]+?) ?[([,] ?(${units})\.? ?[)\]]?$`);
/** `Length (")`. */
const markInBrackets = /^([^([,]+?) ?[([] ?(["']) ?[)\]]$/;
/** `Length mm`, `Länge in mm`, `Edge"`. */
const unitBehind = new RegExp(String.raw`^([^([,]+?)(?: in)?(?: (${units})\.?| ?("))$`);
const unitOfMark: Readonly<Record<string, string>> = { '"': 'in', "'": 'ft' };
const around = /^(?:\(([^()]+)\)|\[([^[\]]+)\]|"([^"]+)")$/;

/** Reads a heading: `d₀`, `d_0` and `d 0` as `d0`; `Bolt:`, `*Edge` and `[Hole]` by their words. Undefined for what is none. */
export function headingName(cell: CellValue): HeadingName | undefined {
  if (typeof cell !== 'string' || cell === '' || cell.length > longestHeading) return undefined;
  const whole = symbolText(undecorated(nameKey(cell)));
  if (whole === '') return undefined;
  const [, bracketed, inBrackets] = /[([,]/.test(whole)
    ? (unitInBrackets.exec(whole) ?? markInBrackets.exec(whole) ?? [])
    : [];
  if (bracketed !== undefined) return { whole, bare: bracketed, unit: unitOf(inBrackets) };
  const [, named, behind, mark] = unitBehind.exec(whole) ?? [];
  return named === undefined
    ? { whole, bare: whole }
    : { whole, bare: named, unit: unitOf(behind ?? mark), isLoose: true };
}

function unitOf(unit = ''): string {
  return unitOfMark[unit] ?? unit;
}

function undecorated(key: string): string {
  const plain = key
    .replace(/[“”„″]/g, '"')
    .replace(/[‘’′]/g, "'")
    .replace(/^[*†‡• ]+/, '');
  const text = plain.replace(/[*:†‡• ]+$/, '');
  const [, ...inside] = around.exec(text) ?? [];
  return inside.find((each) => each !== undefined)?.trim() ?? text;
}

function symbolText(key: string): string {
  if (!/[₀₁₂₃₄]|^[depw] [0-4]/.test(key)) return key;
  return key
    .replace(/[₀₁₂₃₄]/g, (digit) => String('₀₁₂₃₄'.indexOf(digit)))
    .replace(/^([depw]) ?([0-4])\b/, '$1$2');
}
