import { type CellValue, isCellError, type StoredValue } from '../../sheet/cellValue.js';
import type { SheetCells } from '../../sheet/keptFormulas/sheetCells.js';
import { cellKey } from '../../sheet/address.js';
import type { Workbook } from '../workbook.js';
import { isFormulaList } from './formulaList.js';

/** The sheets of a file as the placing of formulas sees them, without a list of formulas. */
export function sheetCellsOf({ sheets, tables }: Workbook): SheetCells[] {
  return sheets.flatMap((sheet, position): SheetCells[] => {
    const { name, cells } = sheet;
    if (!cells || isFormulaList(sheet)) return [];
    const at = (row: number, column: number) => cells.index.get(cellKey(row, column)) ?? -1;
    let [rows, columns] = [0, 0];
    cells.values.forEach((value, i) => {
      if (value === null || value === '') return;
      rows = Math.max(rows, (cells.rows[i] ?? 0) + 1);
      columns = Math.max(columns, (cells.columns[i] ?? 0) + 1);
    });
    return [
      {
        name,
        rows,
        columns,
        value: (row, column) => plain(cells.values[at(row, column)]),
        hasFormula: (row, column) => cells.formulas[at(row, column)] !== undefined,
        tables: tables
          .filter(({ sheet: on }) => on === position)
          .map(({ name: table, zone, headerRows, totalsRows, columns: headings }) => ({
            name: table,
            top: zone.top + headerRows,
            bottom: zone.bottom - totalsRows,
            left: zone.left,
            headings,
          })),
      },
    ];
  });
}

export const plain = (value: StoredValue | undefined): CellValue =>
  isCellError(value) ? value.error : (value ?? null);
