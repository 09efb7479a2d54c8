import { addressedSheets } from './addressedRows.js';
import { type FilledCells, type SheetCells, tableAt } from './sheetCells.js';

/** By what a formula's place is found again, whatever was inserted, deleted or sorted meanwhile. */
export interface Anchor {
  /** The table it stands in, and the heading above it. */
  table?: string;
  heading?: string;
  /** What was typed in its row, the first of it first. */
  row: string;
  /** How far the cells reached of the sheets it names by address: `Shop 40x25; Quote 54x24`. */
  sizes: string;
}

const between = ' | ';

/** Anchors for the formulas of one sheet that become values. */
export function anchorsOf(
  sheet: SheetCells,
  formulas: readonly (FilledCells & { formula: string })[],
  sheets: readonly SheetCells[],
): Anchor[] {
  const taken = takenColumns(formulas);
  return formulas.map(({ row, column, formula }) => {
    const table = tableAt(sheet, row, column);
    const named = addressedSheets(formula, sheet.name);
    return {
      ...(table ? { table: table.name, heading: table.headings[column - table.left] ?? '' } : {}),
      row: rowText(sheet, row, taken.get(row) ?? new Set(), table),
      sizes: sheets
        .filter(({ name }) => named.includes(name.toLowerCase()))
        .map(sizeOf)
        .join('; '),
    };
  });
}

export const sizeOf = ({ name, rows, columns }: SheetCells) => `${name} ${rows}x${columns}`;

/** The columns that formulas fill, by row. */
export function takenColumns(formulas: readonly FilledCells[]): Map<number, Set<number>> {
  const taken = new Map<number, Set<number>>();
  for (const { row, column, rows, columns } of formulas)
    for (let r = row; r < row + rows; r += 1) {
      const own = taken.get(r) ?? new Set();
      taken.set(r, own);
      for (let c = column; c < column + columns; c += 1) own.add(c);
    }
  return taken;
}

/** What is typed in a row, of its table or of the whole sheet, without the columns that formulas fill. */
export function rowText(
  sheet: SheetCells,
  row: number,
  without: ReadonlySet<number>,
  table?: { left: number; headings: readonly string[] },
): string {
  const [from, to] = table ? [table.left, table.left + table.headings.length] : [0, sheet.columns];
  const cells: string[] = [];
  for (let column = from; column < to; column += 1) {
    if (without.has(column) || sheet.hasFormula(row, column)) continue;
    const value = sheet.value(row, column);
    // A blank keeps its place in a table, whose columns are known; elsewhere a column may be put in.
    if (value === null || value === '') {
      if (table) cells.push('');
    } else cells.push(String(value).trim());
  }
  return cells.join(between).trimEnd();
}

/** The first of what is typed: the mark of a part. */
export const markOf = (row: string) => (row.split(between)[0] ?? '').trim();
