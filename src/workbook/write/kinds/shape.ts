import { cellAddress, type Area } from '../../area.js';
import { isFormula, type Content } from '../../content.js';
import { WorkbookError } from '../../workbookError.js';

/** The longest text and formula a cell takes. */
const longestText = 32_767;
const longestFormula = 8192;
const forbiddenInSheetNames = /[\\/?*:[\]]/;
const goodName = /^[\p{L}_\\][\p{L}\p{N}_.\\]{0,254}$/u;
/** A1 or R1C1 references, and the letters that select rows and columns. */
const looksLikeCell = /^(?:[A-Z]{1,3}\d+|R(?:\d*C\d*)?|C\d*)$/i;

/** Refuses rows of another size than the area. */
export function checkSize(area: Area, rows: readonly (readonly unknown[])[] | undefined): void {
  if (!rows) return;
  if (rows.length !== area.rows || rows.some((row) => row.length !== area.columns))
    refuse(`${cellAddress(area)} was given cells of another number of rows or columns.`);
}

/** Refuses what no cell takes. */
export function checkContent(content: Content | undefined): void {
  if (isFormula(content)) {
    if (!content.formula.startsWith('='))
      refuse(`A formula begins with =, not with "${shown(content.formula)}".`);
    if (content.formula.length > longestFormula)
      refuse(`A formula is longer than ${longestFormula} characters.`);
  } else if (typeof content === 'number') {
    if (!Number.isFinite(content)) refuse('A number to be written is not finite.');
  } else if (typeof content === 'string' && content.length > longestText)
    refuse(`"${shown(content)}" is longer than the ${longestText} characters a cell takes.`);
}

export function checkSheetName(name: string): void {
  const bad = forbiddenInSheetNames.test(name) || name.startsWith("'") || name.endsWith("'");
  if (bad || name.trim() === '' || name.length > 31)
    refuse(`"${shown(name)}" cannot name a sheet: 1 to 31 characters without \\ / ? * : [ ].`);
}

/** Refuses what cannot name a table or cells. */
export function checkName(name: string): void {
  if (!goodName.test(name) || looksLikeCell.test(name))
    refuse(`"${shown(name)}" cannot be a name: letters, digits and _ only, and no cell address.`);
}

const shown = (text: string) => text.slice(0, 40);

export function refuse(sentence: string): never {
  throw new WorkbookError('failed', sentence);
}
