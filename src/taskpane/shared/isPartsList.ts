import { InputError } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';

/** Whether headings are those of a parts list that can be checked. */
export function isPartsList(headings: readonly CellValue[]): boolean {
  try {
    readHeadings(headings);
    return true;
  } catch (error) {
    if (error instanceof InputError) return false;
    throw error;
  }
}
