import type { Verdict } from '../../check/verdict.js';
import { type CellValue, isBlank, plainText } from '../../quantity/cellValue.js';
import { type CheckedPart, checkedPart } from '../../row/checkRow.js';
import { rowCells } from '../../row/headings/joinedColumns.js';
import type { Headings } from '../../row/headings/readHeadings.js';
import type { Shop } from '../../shop/readShop.js';
import type { RowPlace } from './partsOfRow.js';

/** A row of a parts list, checked. */
export interface ListRow {
  place: RowPlace;
  checked: CheckedPart;
  verdict: Verdict;
  /** Its Qty is blank: one piece. */
  isOnePiece: boolean;
  /** Its row of the sheet, from 1, where that is hidden. */
  hiddenRow?: number;
}

/** Checks a row of a parts list for its stock plan; undefined for a blank or subtotal row. */
export function listRow(
  cells: readonly CellValue[],
  headings: Headings,
  place: Omit<RowPlace, 'mark'>,
  shop: Shop,
): ListRow | undefined {
  const checked = checkedPart(cells, headings, shop);
  const { result } = checked;
  if (result.blank) return undefined;
  const markCell = rowCells(cells, headings)[headings.fields.mark?.at ?? -1] ?? null;
  const mark = isBlank(markCell) ? '' : plainText(String(markCell)).trim();
  const isOnePiece = result.readings.some(({ is }) => is === 'quantity assumed');
  return { place: { ...place, mark }, checked, verdict: result.verdict, isOnePiece };
}
