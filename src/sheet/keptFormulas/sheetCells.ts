import type { CellValue } from '../cellValue.js';

/** A table: where its cells stand, zero-based, and its headings. */
export interface TablePlace {
  name: string;
  /** The rows of data, without headings and totals; both ends included. */
  top: number;
  bottom: number;
  left: number;
  headings: readonly string[];
}

/** A sheet as the placing of formulas sees it. */
export interface SheetCells {
  name: string;
  /** How far its cells reach. */
  rows: number;
  columns: number;
  /** What stands in a cell; null for a blank cell. */
  value(row: number, column: number): CellValue;
  hasFormula(row: number, column: number): boolean;
  tables: readonly TablePlace[];
}

/** The cells a formula fills; its own is the first. */
export interface FilledCells {
  row: number;
  column: number;
  rows: number;
  columns: number;
}

export function tableAt(sheet: SheetCells, row: number, column: number): TablePlace | undefined {
  return sheet.tables.find(
    ({ top, bottom, left, headings }) =>
      top <= row && row <= bottom && left <= column && column < left + headings.length,
  );
}
