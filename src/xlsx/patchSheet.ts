import { cellAddress, cellKey, parseZone, zoneAddress } from '../sheet/address.js';
import { changedCell, newCell, type CellChange } from './patchCell.js';
import type { Worksheet } from './storedCells.js';
import { XmlReader } from './xml/reader.js';

interface Edit {
  start: number;
  end: number;
  text: string;
}

/** A worksheet part with stored values changed; every other byte stays as it was. */
export function patchSheet(sheet: Worksheet, changes: CellChange[]): string {
  const edits: Edit[] = [];
  const added: CellChange[] = [];
  for (const change of changes) {
    const i = sheet.index.get(cellKey(change.row, change.column));
    if (i === undefined) {
      if (change.value !== null) added.push(change);
      continue;
    }
    const start = sheet.starts[i] as number;
    const end = sheet.ends[i] as number;
    const before = sheet.xml.slice(start, end);
    const after = changedCell(before, change);
    if (after !== before) edits.push({ start, end, text: after });
  }
  if (added.length > 0) edits.push(...insertions(sheet, added));
  return apply(sheet.xml, edits);
}

function apply(xml: string, edits: Edit[]): string {
  edits.sort((a, b) => a.start - b.start || a.end - b.end);
  const pieces: string[] = [];
  let at = 0;
  for (const edit of edits) {
    pieces.push(xml.slice(at, edit.start), edit.text);
    at = edit.end;
  }
  pieces.push(xml.slice(at));
  return pieces.join('');
}

/** New cells go into their rows in column order, rows the sheet lacks are added in row order. */
function insertions(sheet: Worksheet, added: CellChange[]): Edit[] {
  added.sort((a, b) => a.row - b.row || a.column - b.column);
  const edits: Edit[] = [];
  const reader = new XmlReader(sheet.xml);
  let next = 0;
  let row = -1;
  const state = { prefix: '', inRow: false };
  const takeRowsBefore = (limit: number, position: number) => {
    while (next < added.length && (added[next] as CellChange).row < limit) {
      const from = next;
      const { row: target } = added[from] as CellChange;
      while (next < added.length && (added[next] as CellChange).row === target) next++;
      edits.push({ start: position, end: position, text: newRow(added.slice(from, next), state.prefix) });
    }
  };
  let column = -1;
  while (next < added.length && reader.next()) {
    if (reader.name === 'row' && !reader.closing) {
      state.prefix = reader.prefix;
      row = Number(reader.attribute('r') ?? row + 2) - 1;
      column = -1;
      takeRowsBefore(row, reader.tagStart);
      if (reader.empty) next = fillEmptyRow(reader, row, added, next, edits);
    } else if (reader.name === 'c' && !reader.closing) {
      const address = reader.attribute('r');
      column = address === undefined ? column + 1 : (parseZone(address)?.left ?? column + 1);
      next = cellsBefore(added, next, row, column, reader.tagStart, state.prefix, edits);
      reader.skipElement();
    } else if (reader.name === 'row') {
      next = cellsBefore(added, next, row, Infinity, reader.tagStart, state.prefix, edits);
    } else if (reader.name === 'sheetData') {
      if (!reader.closing) state.prefix = reader.prefix;
      if (reader.empty) fillEmptySheet(reader, added, edits);
      else if (reader.closing) takeRowsBefore(Infinity, reader.tagStart);
      if (reader.empty || reader.closing) break;
    }
  }
  return [...edits, ...grownDimension(sheet, added)];
}

function cellsBefore(
  added: CellChange[],
  from: number,
  row: number,
  column: number,
  position: number,
  prefix: string,
  edits: Edit[],
): number {
  let next = from;
  let text = '';
  for (; next < added.length; next++) {
    const change = added[next] as CellChange;
    if (change.row !== row || change.column >= column) break;
    text += newCell(cellAddress(change.row, change.column), change, prefix);
  }
  if (text !== '') edits.push({ start: position, end: position, text });
  return next;
}

function fillEmptyRow(
  reader: XmlReader,
  row: number,
  added: CellChange[],
  from: number,
  edits: Edit[],
): number {
  let next = from;
  while (next < added.length && (added[next] as CellChange).row === row) next++;
  if (next === from) return next;
  const cells = cellsOf(added.slice(from, next), reader.prefix);
  const open = reader.xml.slice(reader.tagStart, reader.tagEnd - 2).trimEnd();
  edits.push({ start: reader.tagStart, end: reader.tagEnd, text: `${open}>${cells}</${reader.prefix}row>` });
  return next;
}

function fillEmptySheet(reader: XmlReader, added: CellChange[], edits: Edit[]): void {
  const rows = new Map<number, CellChange[]>();
  for (const change of added) rows.set(change.row, [...(rows.get(change.row) ?? []), change]);
  const text = [...rows.values()].map((cells) => newRow(cells, reader.prefix)).join('');
  const name = `${reader.prefix}sheetData`;
  edits.push({ start: reader.tagStart, end: reader.tagEnd, text: `<${name}>${text}</${name}>` });
}

const cellsOf = (changes: CellChange[], prefix: string) =>
  changes.map((change) => newCell(cellAddress(change.row, change.column), change, prefix)).join('');

const newRow = (changes: CellChange[], prefix: string) =>
  `<${prefix}row r="${(changes[0] as CellChange).row + 1}">${cellsOf(changes, prefix)}</${prefix}row>`;

/** The sheet's stated extent, when the new cells reach beyond it. */
function grownDimension(sheet: Worksheet, added: CellChange[]): Edit[] {
  const reader = new XmlReader(sheet.xml);
  while (reader.next() && reader.name !== 'sheetData') {
    const bounds = reader.name === 'dimension' ? reader.attributeBounds('ref') : undefined;
    const zone = bounds && parseZone(sheet.xml.slice(bounds.start, bounds.end));
    if (!bounds || !zone) continue;
    const grown = { ...zone };
    for (const { row, column } of added) {
      grown.top = Math.min(grown.top, row);
      grown.bottom = Math.max(grown.bottom, row);
      grown.left = Math.min(grown.left, column);
      grown.right = Math.max(grown.right, column);
    }
    const text = zoneAddress(grown);
    return text === zoneAddress(zone) ? [] : [{ ...bounds, text }];
  }
  return [];
}
