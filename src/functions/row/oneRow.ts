import { refuse } from '../../core/inputError.js';
import type { CellValue } from '../../core/quantity/cellValue.js';

type Matrix = readonly (readonly CellValue[])[];

/** A row of headings and the row below them, of the same columns. */
export function oneRow(
  headings: Matrix,
  row: Matrix,
): { names: readonly CellValue[]; cells: readonly CellValue[] } {
  const [names] = headings;
  const [cells] = row;
  if (headings.length !== 1 || row.length !== 1 || !names || names.length !== cells?.length) {
    const read = `${headings.length} × ${names?.length ?? 0} and ${row.length} × ${cells?.length ?? 0}`;
    return refuse(
      'Row',
      read,
      `headings and row must be one row each, of the same columns (read: ${read}).`,
      'Give both over the same columns.',
    );
  }
  return { names, cells };
}
