import { cellKey, MAX_COLUMNS } from '../../sheet/address.js';
import type { StoredValue } from '../../sheet/cellValue.js';
import type { Sheet } from '../../xlsx/workbook.js';
import type { Worksheet } from '../../xlsx/storedCells.js';

/** The cells of a sheet: what the file holds, and what they hold now. */
export class SheetGrid {
  readonly now: StoredValue[];
  private height: number;
  private width: number;
  /** Cells the file does not have. */
  readonly extra = new Map<number, StoredValue>();

  constructor(readonly file: Worksheet) {
    this.now = file.values.slice();
    ({ height: this.height, width: this.width } = file);
  }

  fileValue(row: number, column: number): StoredValue {
    const i = this.file.index.at(row, column);
    return i === undefined ? null : (this.file.values[i] as StoredValue);
  }

  value(row: number, column: number): StoredValue {
    const i = this.file.index.at(row, column);
    if (i !== undefined) return this.now[i] as StoredValue;
    return this.extra.size === 0 ? null : (this.extra.get(cellKey(row, column)) ?? null);
  }

  /** One past the last row and column used. */
  size(): { height: number; width: number } {
    return { height: this.height, width: this.width };
  }

  /** The cells the file does not have, with their values, row by row. */
  *extraCells(): Generator<[number, number, StoredValue]> {
    for (const key of Float64Array.from(this.extra.keys()).sort())
      yield [Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS, this.extra.get(key) ?? null];
  }

  set(row: number, column: number, value: StoredValue): void {
    const i = this.file.index.at(row, column);
    const key = cellKey(row, column);
    if (i !== undefined) this.now[i] = value;
    else if (value !== null || this.extra.has(key)) {
      this.extra.set(key, value);
      this.height = Math.max(this.height, row + 1);
      this.width = Math.max(this.width, column + 1);
    }
  }
}

/** One grid per sheet; undefined for sheets without cells. */
export type Grids = (SheetGrid | undefined)[];

export const openGrids = (workbook: { sheets: Sheet[] }): Grids =>
  workbook.sheets.map(({ cells }) => cells && new SheetGrid(cells));
