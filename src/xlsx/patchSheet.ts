import { cellAddress, cellKey, parseZone, zoneAddress, type Zone } from '../sheet/address.js';
import { changedCell, newCell } from './cellText.js';
import { PartCells } from './partCells.js';
import type { Worksheet } from './storedCells.js';
import { writeCell, type CellChange } from './writeCell.js';
import { XmlElement } from './xml/element.js';
import { XmlReader } from './xml/reader.js';

/** What becomes of a sheet's cells. */
export interface SheetChanges {
  /** What the file has in a cell, by its position among its cells, becomes this; undefined where it stays. */
  ofCell: (at: number) => CellChange | undefined;
  /** Cells that the file does not have. */
  added: readonly CellChange[];
}

/**
 * A worksheet part with stored values changed, in pieces; none where nothing changes. Every other byte stays as it was. The
 * cells of the file are known by their place in its text, so only their texts are read again. What needs a row that has no
 * cell yet is put in by its elements.
 */
export function* patchSheet(cells: Worksheet, { ofCell, added }: SheetChanges): Generator<string> {
  const inserts: Insert[] = [];
  const late: CellChange[] = [];
  let grown: Zone | undefined;
  for (const change of added) {
    const { row, column, value } = change;
    if (value === null) continue;
    const place = placeOfNew(cells, row, column);
    if (place === undefined) late.push(change);
    else {
      const text = newCell(cellAddress(row, column), value);
      inserts.push({ start: place, end: place, text, key: cellKey(row, column) });
      grown = grownBy(grown, row, column);
    }
  }
  const dimension = grown && grownDimension(cells, grown);
  if (dimension) inserts.push(dimension);
  inserts.sort((a, b) => a.start - b.start || a.key - b.key);
  const pieces = patched(cells, ofCell, inserts);
  if (late.length === 0) yield* pieces;
  else yield patchElements([...pieces].join('') || cells.xml, late);
}

/** A piece of text that is put in, or in the place of another; new cells in the order of their keys. */
interface Insert {
  start: number;
  end: number;
  text: string;
  key: number;
}

/** Texts that are joined to one piece. */
const textsOfPiece = 4096;

function* patched(
  { xml, starts, ends }: Worksheet,
  ofCell: SheetChanges['ofCell'],
  inserts: readonly Insert[],
): Generator<string> {
  let texts: string[] = [];
  let [at, next] = [0, 0];
  const put = (start: number, end: number, text: string) => {
    texts.push(xml.slice(at, start), text);
    at = end;
  };
  const putBefore = (place: number) => {
    for (let insert = inserts[next]; insert && insert.start <= place; insert = inserts[++next])
      put(insert.start, insert.end, insert.text);
  };
  for (let cell = 0; cell < starts.length; cell++) {
    const change = ofCell(cell);
    if (!change) continue;
    const [start, end] = [starts[cell] as number, ends[cell] as number];
    putBefore(start);
    put(start, end, changedCell(xml.slice(start, end), change));
    if (texts.length < textsOfPiece) continue;
    yield texts.join('');
    texts = [];
  }
  putBefore(Infinity);
  if (at === 0) return;
  texts.push(xml.slice(at));
  yield texts.join('');
}

/** Where a cell that the file lacks comes in the text; undefined where its row has no cell, or a prefix. */
function placeOfNew(cells: Worksheet, row: number, column: number): number | undefined {
  const place = cells.index.placeOfNew(row, column);
  if (!place) return undefined;
  const { xml, starts, ends } = cells;
  const { before, after } = place;
  if (before !== undefined) return isPlain(xml, starts[before] as number) ? starts[before] : undefined;
  if (!isPlain(xml, starts[after] as number)) return undefined;
  const close = xml.indexOf('<', ends[after]);
  return xml.startsWith('</row>', close) ? close : undefined;
}

const isPlain = (xml: string, start: number): boolean => /^<c[ />]/.test(xml.slice(start, start + 3));

function grownBy(zone: Zone | undefined, row: number, column: number): Zone {
  if (!zone) return { top: row, bottom: row, left: column, right: column };
  return {
    top: Math.min(zone.top, row),
    bottom: Math.max(zone.bottom, row),
    left: Math.min(zone.left, column),
    right: Math.max(zone.right, column),
  };
}

/** The part says which cells it uses; new ones are among them. */
function grownDimension({ xml }: Worksheet, grown: Zone): Insert | undefined {
  const reader = new XmlReader(xml);
  while (reader.next() && reader.name !== 'dimension') if (reader.name === 'sheetData') return undefined;
  const bounds = reader.name === 'dimension' ? reader.attributeBounds('ref') : undefined;
  const zone = bounds && parseZone(xml.slice(bounds.start, bounds.end));
  if (!zone) return undefined;
  const corner = grownBy(grownBy(grown, zone.top, zone.left), zone.bottom, zone.right);
  return { ...bounds, text: zoneAddress(corner), key: 0 };
}

function patchElements(xml: string, changes: readonly CellChange[]): string {
  const part = XmlElement.part(xml);
  const cells = new PartCells(part.root);
  for (const change of changes) writeCell(cells.cell(change.row, change.column), change, true);
  return String(part);
}
