import type { Anchor } from './anchor.js';
import { type CellError, isCellError } from '../cellValue.js';
import { sameName } from '../names.js';

/** The sheet that keeps formulas that became values; a number follows where the name is taken. */
export const listSheetName = 'Tonrow formulas';
export const listHeadings = [
  'Sheet',
  'Cell',
  'Formula',
  'Stored as',
  'Value',
  'Table',
  'Heading',
  'Row',
  'Sizes',
];
/** The one column of a list that is not text. */
export const valueColumn = 4;
/** The most letters a cell holds. */
const longestText = 32_767;

export type ListedValue = string | number | boolean | CellError | null;

/** A row of the list: where a formula stood, its text and value, and by what its place is found again. */
export interface ListRow<Value = ListedValue> {
  sheet: string;
  cell: string;
  /** With its equals sign, as people read it. */
  formula: string;
  /** How it was stored; empty for an ordinary formula. */
  stored: string;
  value: Value;
  anchor: Anchor;
}

export function isListName(name: string): boolean {
  return sameName(name.slice(0, listSheetName.length), listSheetName);
}

/** Whether cells are the headings of a list. */
export function areListHeadings(cells: readonly unknown[]): boolean {
  return listHeadings.every((heading, at) => cells[at] === heading);
}

/** The cells of a row of the list. */
export function listCells<Value>({ sheet, cell, formula, stored, value, anchor }: ListRow<Value>) {
  return [
    sheet,
    cell,
    formula,
    stored === '' ? null : stored,
    value,
    anchor.table ?? null,
    anchor.heading ?? null,
    anchor.row.slice(0, longestText),
    anchor.sizes.slice(0, longestText),
  ];
}

/** A row of the list from its cells; undefined where it names no cell and formula. */
export function readListRow<Value extends ListedValue>(
  cells: readonly Value[],
): ListRow<Value | null> | undefined {
  const [sheet, cell, formula, stored, value = null, table, heading, row, sizes] = cells;
  if (typeof sheet !== 'string' || typeof cell !== 'string' || typeof formula !== 'string') return undefined;
  if (!/^[A-Z]{1,3}\d{1,7}$/.test(cell) || !formula.startsWith('=')) return undefined;
  const named = textOf(table) === '' ? {} : { table: textOf(table), heading: textOf(heading) };
  const anchor = { ...named, row: textOf(row), sizes: textOf(sizes) };
  return { sheet, cell, formula, stored: typeof stored === 'string' ? stored : '', value, anchor };
}

/** A text of the list that the host has turned into a number or a truth value is still the text. */
function textOf(value: ListedValue | undefined): string {
  return value === null || value === undefined || isCellError(value) ? '' : String(value);
}
