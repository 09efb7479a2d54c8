import { sameName } from '../../sheet/names.js';
import { cellAddress, cellKey, parseZone } from '../../sheet/address.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import type { StoredValue } from '../../sheet/cellValue.js';
import type { Workbook } from '../../xlsx/workbook.js';
import type { Grids } from './sheetGrid.js';

/** A cell the caller changes before the recalculation. */
export interface InputChange {
  sheet: string;
  /** `B4`. */
  cell: string;
  value: StoredValue;
}

export interface PlacedChange {
  sheet: number;
  row: number;
  column: number;
  value: StoredValue;
}

/** Finds the cells to change, or refuses in one sentence. */
export function placeChanges(workbook: Workbook, changes: InputChange[]): PlacedChange[] {
  return changes.map(({ sheet: name, cell, value }) => {
    const sheet = workbook.sheets.findIndex((one) => sameName(one.name, name));
    const cells = workbook.sheets[sheet]?.cells;
    const zone = parseZone(cell);
    if (!cells)
      throw new WorkbookRefused(`The workbook has no sheet ${JSON.stringify(name)} to change a cell on.`);
    if (!zone) throw new WorkbookRefused(`${JSON.stringify(cell)} is not the address of a cell, such as B4.`);
    const { top: row, left: column } = zone;
    const formula = cells.formulas[cells.index.get(cellKey(row, column)) ?? -1];
    if (formula?.shares || (formula && formula.kind !== 'plain')) {
      throw new WorkbookRefused(
        `${name}!${cellAddress(row, column)} holds a formula that fills other cells too.`,
      );
    }
    return { sheet, row, column, value };
  });
}

/** Writes the changes into fresh grids. */
export function applyChanges(grids: Grids, changes: PlacedChange[]): void {
  for (const { sheet, row, column, value } of changes) grids[sheet]?.set(row, column, value);
}
