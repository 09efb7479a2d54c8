import { type BookStock, stockSheetTitle } from '../../print/stock/stockOfBook.js';
import { sameName } from '../../sheet/names.js';
import { addSheet, type NewCell } from '../../xlsx/addSheet.js';
import { refuseWorkbook } from '../../xlsx/refusal/refusal.js';
import { cellKey } from '../../sheet/address.js';
import type { Workbook } from '../../xlsx/workbook.js';

type Content = Exclude<BookStock, { problem: string }>['sheet'];

/** The workbook's file with the sheet of a plan; an earlier plan is replaced where that is asked, and nothing else. */
export function withStockSheet(
  workbook: Workbook,
  content: Content,
  { replace }: { replace: boolean },
): { bytes: Uint8Array; name: string } {
  const old = workbook.sheets.find(({ name }) => sameName(name, content.name));
  const at = old?.cells?.index.get(cellKey(0, 0));
  if (replace && old && (at === undefined || old.cells?.values[at] !== stockSheetTitle))
    refuseWorkbook(
      `The sheet ${JSON.stringify(old.name)} is no plan of ours and is not replaced: rename it, or leave out --replace.`,
    );
  const rows = content.rows.map((row) => row.map(newCell));
  return addSheet(workbook, { ...content, rows }, { replace });
}

function newCell(cell: Content['rows'][number][number]): NewCell {
  if (cell === null) return null;
  return cell.kind === 'title' || cell.kind === 'heading' ? { bold: cell.value } : cell.value;
}
