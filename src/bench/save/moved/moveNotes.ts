import { cellAddress, parseCell } from '../../../sheet/address.js';
import type { XmlElement } from '../../../xlsx/xml/element.js';
import type { SheetMove } from './sheetMove.js';

/** Notes and comments on the cells where they are now. */
export function moveComments(list: XmlElement, move: SheetMove): void {
  list.keep((note) => {
    if (note.name !== 'comment' && note.name !== 'threadedComment') moveComments(note, move);
    const cell = parseCell(note.attribute('ref') ?? '');
    if (!cell) return true;
    const now = move.place(cell.row, cell.column);
    if (now) note.set({ ref: cellAddress(now.row, now.col) });
    return now !== undefined;
  });
}

/** The boxes of notes. They are written in a form that is not always well-formed XML. */
export function movedNoteShapes(xml: string, move: SheetMove): string {
  return xml.replaceAll(/<v:shape\s[\s\S]*?<\/v:shape>/g, (shape) => {
    const [row, column] = [numberIn(shape, 'Row'), numberIn(shape, 'Column')];
    if (row === undefined || column === undefined) return shape;
    const now = move.place(row, column);
    if (!now) return '';
    return shape
      .replace(/(<x:Row>)\s*\d+/, `$1${now.row}`)
      .replace(/(<x:Column>)\s*\d+/, `$1${now.col}`)
      .replace(
        /(<x:Anchor>)([^<]*)/,
        (_, tag: string, anchor: string) => tag + movedAnchor(anchor, now.row - row, now.col - column),
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
export function moveDrawing(drawing: XmlElement, { rows, columns }: SheetMove): void {
  for (const corner of drawing.within()) {
    if (corner.name !== 'from' && corner.name !== 'to') continue;
    for (const [name, map] of [['row', rows] as const, ['col', columns] as const]) {
      const element = corner.child(name);
      const at = Number(element?.text);
      if (element) element.text = String(map.span(at, at + 10_000)?.first ?? 0);
    }
  }
}
