import type { Zone } from '../sheet/address.js';
import type { StoredValue } from '../sheet/cellValue.js';
import type { CellIndex } from './cellIndex.js';
import { refuseWorkbook } from './refusal/refusal.js';

/** A formula as a worksheet stores it. */
export interface StoredFormula {
  /** Without the equals sign; of a shared formula, the text of its first cell. */
  text: string;
  /**
   * `plain`: one value, ranges meet the cell's own row or column. `array`: fills its fixed range.
   * `dynamic`: spills. `table`: the grid of a what-if data table, which only the host can compute.
   */
  kind: 'plain' | 'array' | 'dynamic' | 'table';
  /** The range an array fills or last spilled to. */
  ref?: Zone;
  /** The cell whose point of view the text is written from. */
  baseRow: number;
  baseColumn: number;
  /** Other cells' formulas are stored with this one. */
  shares?: boolean;
  /** Whether the file holds a value for it. */
  cached: boolean;
}

/** A worksheet's cells in file order, in parallel arrays; offsets are into `xml`. */
export interface Worksheet {
  xml: string;
  rows: number[];
  columns: number[];
  starts: number[];
  ends: number[];
  values: StoredValue[];
  formulas: (StoredFormula | undefined)[];
  /** Cell key to position in the arrays. */
  index: CellIndex;
  merged: Zone[];
  /** Rows that are hidden, by hand or by a filter. */
  hiddenRows: Set<number>;
  /** One past the last row and column used. */
  height: number;
  width: number;
}

/** Adds one cell to the arrays. */
export function addCell(
  sheet: Worksheet,
  row: number,
  column: number,
  start: number,
  end: number,
  value: StoredValue,
  formula: StoredFormula | undefined,
): void {
  if (!sheet.index.add(row, column))
    refuseWorkbook('The file is damaged: a sheet holds the same cell twice.');
  sheet.rows.push(row);
  sheet.columns.push(column);
  sheet.starts.push(start);
  sheet.ends.push(end);
  sheet.values.push(value);
  sheet.formulas.push(formula);
  if (row >= sheet.height) sheet.height = row + 1;
  if (column >= sheet.width) sheet.width = column + 1;
}
