import { sameName } from '../sheet/names.js';
import type { StoredValue } from '../sheet/cellValue.js';
import { refuseWorkbook } from './refusal/refusal.js';
import { openWorkbook } from './workbook.js';

/** The stored values of a sheet, row by row from A1; blank cells are null, each row ends at its last cell. */
export function readSheetValues(bytes: Uint8Array, sheetName: string): StoredValue[][] {
  const sheet = openWorkbook(bytes).sheets.find(({ name }) => sameName(name, sheetName));
  if (!sheet?.cells)
    return refuseWorkbook(`The workbook has no sheet ${JSON.stringify(sheetName)} with cells.`);
  const { cells } = sheet;
  const rows = Array.from({ length: cells.height }, (): StoredValue[] => []);
  cells.values.forEach((value, i) => {
    const row = rows[cells.rows[i] as number] as StoredValue[];
    while (row.length < (cells.columns[i] as number)) row.push(null);
    row[cells.columns[i] as number] = value;
  });
  return rows;
}
