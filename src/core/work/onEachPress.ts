import type { CellValue } from '../quantity/cellValue.js';
import { isBlankRow } from '../row/blankRow.js';
import { checkedPart } from '../row/checkRow.js';
import { type Headings, readHeadings } from '../row/headings/readHeadings.js';
import type { CheckedRow } from '../row/rowResult.js';
import type { Shop } from '../shop/readShop.js';
import { type RowWorkResult, workOnChecked } from './workOnRow.js';

/** What one press would make of a row, whichever press the row names. */
export interface OnOnePress {
  press: string;
  result: CheckedRow;
  work: RowWorkResult;
}

/**
 * A row of a parts list on every press of the shop in turn.
 * @param cells the row's cells, in the order of the headings
 * @param titles the headings as they stand in the list
 * @param shop the shop's presses, tools and settings
 * @returns the row as each press has it, in the order of the presses; none for a blank row
 * Source: each check names its own.
 */
export function onEachPress(
  cells: readonly CellValue[],
  titles: readonly CellValue[],
  shop: Shop,
): OnOnePress[] {
  // A row that holds nothing but its press would be one that lacks everything.
  if (isBlankRow(cells, readHeadings(titles))) return [];
  const { headings, at } = withPressColumn(titles);
  return shop.presses.flatMap(({ name }) => {
    const named = [...cells];
    named[at] = name;
    const checked = checkedPart(named, headings, shop);
    if (checked.result.blank) return [];
    return [{ press: name, result: checked.result, work: workOnChecked(checked, shop) }];
  });
}

/** The headings with a column for the press, and where it is. */
export function withPressColumn(titles: readonly CellValue[]): { headings: Headings; at: number } {
  const own = readHeadings(titles);
  const at = own.fields.press?.at;
  return at === undefined
    ? { headings: readHeadings([...titles, 'Press']), at: titles.length }
    : { headings: own, at };
}
