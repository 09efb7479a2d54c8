import { isBlank, type CellValue } from '../../../core/quantity/cellValue.js';
import { knownHeadings } from './listBounds.js';

/** The headings stand in one of so many first rows. */
export const headingRowsTried = 15;

/** The row, from 0, that most likely holds the headings: the one with the most that a check reads. */
export function headingRowOf(rows: readonly (readonly CellValue[])[]): number {
  const known = rows.slice(0, headingRowsTried).map(knownHeadings);
  const most = Math.max(...known, 0);
  const firstFilled = rows.findIndex((row) => row.filter((cell) => !isBlank(cell)).length > 1);
  return most > 0 ? known.indexOf(most) : Math.max(0, firstFilled);
}
