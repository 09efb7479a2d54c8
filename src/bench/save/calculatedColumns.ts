import type { GridBook } from '../book/gridBook.js';
import type { NamedTable } from '../book/tableNames.js';
import { storedFormula } from './storedFormula.js';

/**
 * The formula of each column of a table as files store it, where every row of the column has the same: programs give it
 * to rows that are added. Undefined for the other columns.
 */
export function calculatedColumns(
  book: GridBook,
  { sheetId, zone, headerRows, totalsRows, name }: NamedTable,
  namespace: string,
): (string | undefined)[] {
  const [first, last] = [zone.top + headerRows, zone.bottom - totalsRows];
  return Array.from({ length: zone.right - zone.left + 1 }, (_, at) => {
    const formulaIn = (row: number) => book.formula({ sheetId, row, col: zone.left + at });
    const formula = first <= last ? formulaIn(first) : undefined;
    // Only a formula that names the table says the same in every row.
    if (!formula?.includes('[')) return undefined;
    for (let row = first + 1; row <= last; row++) if (formulaIn(row) !== formula) return undefined;
    return storedFormula(formula, namespace, name);
  });
}
