import { parseFormula } from '../../sheet/formula/parse.js';
import { WorkbookError } from '../../workbook/workbookError.js';

const scope = { sheets: [], tables: new Map(), names: new Map(), namespace: '', ours: new Set<string>() };
const place = { sheet: 0, row: 0, column: 0, shift: { rows: 0, columns: 0 } };

/** A column of formulas is one text, thousands of times. */
const readable = new Set<string>();
const readableKept = 500;

/** Refuses a formula that a spreadsheet would not take at all. */
export function refuseUnreadable(formula: string): void {
  if (readable.has(formula)) return;
  const { unsupported = '' } = parseFormula(formula.slice(1), place, scope);
  if (/^The formula (?:ends|cannot be read)/.test(unsupported))
    throw new WorkbookError('not allowed', `${unsupported} It was not written.`);
  if (readable.size >= readableKept) readable.clear();
  readable.add(formula);
}
