import type { Verdict } from '../../check/verdict.js';
import { type CellValue, isBlank, plainText } from '../../quantity/cellValue.js';
import { type CheckedPart, checkedPart } from '../../row/checkRow.js';
import { rowCells } from '../../row/headings/joinedColumns.js';
import type { Headings } from '../../row/headings/readHeadings.js';
import type { OtherRow } from '../../row/rowKind.js';
import type { Shop } from '../../shop/readShop.js';
import type { RowPlace } from './partsOfRow.js';
import type { RowOnSheet } from './stockJob.js';

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

/** A row of a parts list that is no part, and what it is taken for. */
export interface OtherListRow extends RowOnSheet {
  is: OtherRow;
}

/** Where a row stands: in its list and on the sheet, from 1, and whether it is seen there. */
export interface ListRowPlace extends Omit<RowPlace, 'mark'> {
  onSheet: number;
  isHidden: boolean;
}

/** Checks a row of a parts list for its stock plan; undefined for a blank one. */
export function listRow(
  cells: readonly CellValue[],
  headings: Headings,
  { onSheet, isHidden, ...place }: ListRowPlace,
  shop: Shop,
): ListRow | OtherListRow | undefined {
  const checked = checkedPart(cells, headings, shop);
  const { result } = checked;
  if (result.blank) return result.is && { list: place.list, row: onSheet, is: result.is };
  const markCell = rowCells(cells, headings)[headings.fields.mark?.at ?? -1] ?? null;
  const mark = isBlank(markCell) ? '' : plainText(String(markCell)).trim();
  const isOnePiece = result.readings.some(({ is }) => is === 'quantity assumed');
  return {
    ...{ place: { ...place, mark }, checked, verdict: result.verdict, isOnePiece },
    ...(isHidden && { hiddenRow: onSheet }),
  };
}
