import { cellAddress, parseCell } from '../../../sheet/address.js';
import { applyEdits, elementCuts, type TextEdit } from '../../../xlsx/xml/cutElements.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import type { HeaderMap } from '../headers/headerMap.js';
import type { SheetMove } from '../headers/sheetMoves.js';

/** Notes and comments on the cells where they are now. */
export function movedComments(xml: string, move: SheetMove): string {
  const isNote = ({ name }: XmlReader) => name === 'comment' || name === 'threadedComment';
  const place = (reader: XmlReader): string | undefined => {
    const cell = parseCell(reader.attribute('ref') ?? '');
    const row = cell && move.rows.place(cell.row);
    const column = cell && move.columns.place(cell.column);
    return row === undefined || column === undefined ? undefined : cellAddress(row, column);
  };
  const edits: TextEdit[] = elementCuts(xml, (reader) => isNote(reader) && place(reader) === undefined);
  const reader = new XmlReader(xml);
  while (reader.next()) {
    const bounds = reader.closing || !isNote(reader) ? undefined : reader.attributeBounds('ref');
    const address = bounds && place(reader);
    if (bounds && address !== undefined) edits.push({ ...bounds, text: address });
  }
  return applyEdits(xml, edits);
}

/** The boxes of notes. They are written in a form that is not always well-formed XML. */
export function movedNoteShapes(xml: string, { rows, columns }: SheetMove): string {
  return xml.replaceAll(/<v:shape\s[\s\S]*?<\/v:shape>/g, (shape) => {
    const row = numberIn(shape, 'Row');
    const column = numberIn(shape, 'Column');
    if (row === undefined || column === undefined) return shape;
    const [r, c] = [rows.place(row), columns.place(column)];
    if (r === undefined || c === undefined) return '';
    return shape
      .replace(/(<x:Row>)\s*\d+/, `$1${r}`)
      .replace(/(<x:Column>)\s*\d+/, `$1${c}`)
      .replace(
        /(<x:Anchor>)([^<]*)/,
        (_, tag: string, anchor: string) => tag + movedAnchor(anchor, r - row, c - column),
      );
  });
}

function numberIn(shape: string, name: string): number | undefined {
  const digits = new RegExp(`<x:${name}>\\s*(\\d+)`).exec(shape)?.[1];
  return digits === undefined ? undefined : Number(digits);
}

/** Left column, offset, top row, offset, right column, offset, bottom row, offset. */
function movedAnchor(anchor: string, down: number, right: number): string {
  const shift: Readonly<Record<number, number>> = { 0: right, 2: down, 4: right, 6: down };
  return anchor
    .split(',')
    .map((number, at) => String(Math.max(0, Number(number) + (shift[at] ?? 0))))
    .join(', ');
}

/** Pictures and charts on the cells where these are now; what stood on cells that went moves to the next. */
export function movedDrawing(xml: string, { rows, columns }: SheetMove): string {
  const reader = new XmlReader(xml);
  const edits: TextEdit[] = [];
  let anchored = false;
  while (reader.next()) {
    if (reader.name === 'from' || reader.name === 'to') anchored = !reader.closing;
    if (reader.closing || !anchored || (reader.name !== 'row' && reader.name !== 'col')) continue;
    const map = reader.name === 'row' ? rows : columns;
    const start = reader.tagEnd;
    const place = nearest(Number(reader.text()), map);
    edits.push({ start, end: reader.tagStart, text: String(place) });
  }
  return applyEdits(xml, edits);
}

function nearest(at: number, map: HeaderMap): number {
  return map.span(at, at + 10_000)?.first ?? 0;
}
