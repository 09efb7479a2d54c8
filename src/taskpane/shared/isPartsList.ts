import { InputError } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { isStockHeadings, isStockTable } from '../../core/shop/readStock.js';

/** Whether headings are those of a parts list that can be checked; `name` is that of its table. */
export function isPartsList(headings: readonly CellValue[], name = ''): boolean {
  try {
    readHeadings(headings);
    return !isStockTable(name) && !isStockHeadings(headings);
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
