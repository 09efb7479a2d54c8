import { cellAddress, cellKey, parseZone, zoneAddress, type Zone } from '../sheet/address.js';
import { changedCell, newCell } from './cellText.js';
import { PartCells } from './partCells.js';
import type { Worksheet } from './storedCells.js';
import { writeCell, type CellChange } from './writeCell.js';
import { XmlElement } from './xml/element.js';
import { XmlReader } from './xml/reader.js';

/**
 * A worksheet part with stored values changed; every other byte stays as it was. The cells of the file are known by
 * their place in its text, so only their texts are read again. What needs a row that has no cell yet is put in by its
 * elements.
 */
export function patchSheet(cells: Worksheet, changes: Iterable<CellChange>): string {
  const edits = new Edits(cells.xml);
  const late: CellChange[] = [];
  let grown: Zone | undefined;
  for (const change of changes) {
    const { row, column } = change;
    const at = cells.index.at(row, column);
    if (at !== undefined) {
      const [start, end] = [cells.starts[at] as number, cells.ends[at] as number];
      edits.add(start, end, change);
    } else if (change.value !== null) {
      const place = placeOfNew(cells, row, column);
      if (place === undefined) late.push(change);
      else {
        edits.add(place, place, newCell(cellAddress(row, column), change.value), cellKey(row, column));
        grown = grownBy(grown, row, column);
      }
    }
  }
  if (grown) growDimension(cells, grown, edits);
  const xml = edits.made();
  return late.length === 0 ? xml : patchElements(xml, late);
}

/** Pieces that are put together at a time: small texts are not kept until the end. */
const piecesAtOnce = 4096;

/**
 * Pieces of a text that are replaced, in any order: new cells by their keys, before the cell that they push on. The text of
 * a changed cell is made when its place comes.
 */
class Edits {
  private readonly starts: number[] = [];
  private readonly ends: number[] = [];
  private readonly texts: (string | CellChange)[] = [];
  private readonly keys: number[] = [];
  private sorted = true;

  constructor(private readonly xml: string) {}

  add(start: number, end: number, text: string | CellChange, key = 0): void {
    const before = this.ends.at(-1) ?? 0;
    if (start < before || (start === before && key < (this.keys.at(-1) ?? 0))) this.sorted = false;
    this.keys.push(key);
    this.starts.push(start);
    this.ends.push(end);
    this.texts.push(text);
  }

  made(): string {
    const { xml, starts, ends, texts, keys } = this;
    if (texts.length === 0) return xml;
    const order = this.sorted ? undefined : Uint32Array.from(starts, (_, i) => i);
    const difference = (of: number[], a: number, b: number) => (of[a] as number) - (of[b] as number);
    order?.sort((a, b) => difference(starts, a, b) || difference(ends, a, b) || difference(keys, a, b));
    const made: string[] = [];
    let pieces: string[] = [];
    let at = 0;
    for (let i = 0; i < texts.length; i++) {
      const edit = order?.[i] ?? i;
      const [start, end] = [starts[edit] as number, ends[edit] as number];
      const text = texts[edit] as string | CellChange;
      pieces.push(
        xml.slice(at, start),
        typeof text === 'string' ? text : changedCell(xml.slice(start, end), text),
      );
      at = end;
      if (pieces.length < piecesAtOnce) continue;
      made.push(pieces.join(''));
      pieces = [];
    }
    made.push(pieces.join(''), xml.slice(at));
    return made.join('');
  }
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
function growDimension({ xml }: Worksheet, grown: Zone, edits: Edits): void {
  const reader = new XmlReader(xml);
  while (reader.next() && reader.name !== 'dimension') if (reader.name === 'sheetData') return;
  const bounds = reader.name === 'dimension' ? reader.attributeBounds('ref') : undefined;
  const zone = bounds && parseZone(xml.slice(bounds.start, bounds.end));
  if (!zone) return;
  const corner = grownBy(grownBy(grown, zone.top, zone.left), zone.bottom, zone.right);
  edits.add(bounds.start, bounds.end, zoneAddress(corner));
}

function patchElements(xml: string, changes: readonly CellChange[]): string {
  const part = XmlElement.part(xml);
  const cells = new PartCells(part.root);
  for (const change of changes) writeCell(cells.cell(change.row, change.column), change, true);
  return String(part);
}
