import type { StoredFormula, Worksheet } from './storedCells.js';
import { parseCell, parseZone } from '../sheet/address.js';
import { entriesInTurn, type Pausing } from './pausing.js';
import { refuseWorkbook } from './refusal/refusal.js';
import { CellIndex } from './cellIndex.js';
import { readCell, type CellContext } from './cell.js';
import { XmlReader } from './xml/reader.js';

/** Scans a worksheet part once from start to end. */
export function* scanWorksheet(xml: string, context: CellContext): Pausing<Worksheet> {
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
      if (sheet.rows.length % entriesInTurn === 0) yield;
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
  const [rows, columns]: [number[], number[]] = [[], []];
  return {
    xml,
    rows,
    columns,
    starts: [],
    ends: [],
    values: [],
    formulas: [],
    index: new CellIndex(rows, columns),
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
