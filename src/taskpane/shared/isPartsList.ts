import { InputError } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { isStockHeadings } from '../../core/shop/readStock.js';

/** Whether headings are those of a parts list that can be checked. */
export function isPartsList(headings: readonly CellValue[]): boolean {
  try {
    readHeadings(headings);
    return !isStockHeadings(headings);
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
