import { cellKey, parseCell, parseZone, type Zone } from '../sheet/address.js';
import type { StoredValue } from '../sheet/cellValue.js';
import { refuseWorkbook } from './refusal.js';
import { readCell, type CellContext } from './cell.js';
import { XmlReader } from './xml/reader.js';

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
  index: Map<number, number>;
  merged: Zone[];
  /** Rows that are hidden, by hand or by a filter. */
  hiddenRows: Set<number>;
  /** One past the last row and column used. */
  height: number;
  width: number;
}

/** Scans a worksheet part once from start to end. */
export function scanWorksheet(xml: string, context: CellContext): Worksheet {
  const sheet = emptyWorksheet(xml);
  const reader = new XmlReader(xml);
  const shared = new Map<string, StoredFormula>();
  let row = -1;
  let column = -1;
  while (reader.next()) {
    if (reader.closing) continue;
    if (reader.name === 'c') {
      column = readAddress(reader, row, column);
      readCell(reader, sheet, row, column, shared, context);
    } else if (reader.name === 'row') {
      row = rowNumber(reader, row);
      column = -1;
      const hidden = reader.attribute('hidden');
      if (hidden === '1' || hidden === 'true') sheet.hiddenRows.add(row);
    } else if (reader.name === 'mergeCell') {
      const zone = parseZone(reader.attribute('ref') ?? '');
      if (zone) sheet.merged.push(zone);
    }
  }
  return sheet;
}

function emptyWorksheet(xml: string): Worksheet {
  return {
    xml,
    rows: [],
    columns: [],
    starts: [],
    ends: [],
    values: [],
    formulas: [],
    index: new Map(),
    merged: [],
    hiddenRows: new Set(),
    height: 0,
    width: 0,
  };
}

function rowNumber(reader: XmlReader, previous: number): number {
  const text = reader.attribute('r');
  const row = text === undefined ? previous + 1 : Number(text) - 1;
  if (!Number.isInteger(row) || row < 0 || row >= 1_048_576) {
    refuseWorkbook(`The file is damaged: a sheet has a row numbered ${JSON.stringify(text)}.`);
  }
  return row;
}

/** The column of the cell just opened; writers may leave addresses out, cells then follow each other. */
function readAddress(reader: XmlReader, row: number, previous: number): number {
  const bounds = reader.attributeBounds('r');
  if (!bounds) return previous + 1;
  const text = reader.xml.slice(bounds.start, bounds.end);
  const cell = parseCell(text);
  if (!cell || cell.row !== row)
    refuseWorkbook(`The file is damaged: a sheet has a cell at ${JSON.stringify(text)} in row ${row + 1}.`);
  return cell.column;
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
  const key = cellKey(row, column);
  if (sheet.index.has(key)) refuseWorkbook('The file is damaged: a sheet holds the same cell twice.');
  sheet.index.set(key, sheet.rows.length);
  sheet.rows.push(row);
  sheet.columns.push(column);
  sheet.starts.push(start);
  sheet.ends.push(end);
  sheet.values.push(value);
  sheet.formulas.push(formula);
  if (row >= sheet.height) sheet.height = row + 1;
  if (column >= sheet.width) sheet.width = column + 1;
}
