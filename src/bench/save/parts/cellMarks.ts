import { cellKey, zoneAddress, type Zone } from '../../../sheet/address.js';
import { encodeString } from '../../../xlsx/xml/text.js';
import { XmlReader } from '../../../xlsx/xml/reader.js';
import { scanWorksheet } from '../../../xlsx/worksheet.js';

/** What a cell gets besides its value. */
export interface CellMark {
  row: number;
  column: number;
  /** In the form of files, without its equals sign; the cell has no formula yet. */
  formula?: string;
  /** The cells the formula fills, for one that fills several. */
  fills?: Zone;
  /** The number of its style. */
  style?: number;
  /** It is new and there is nothing in it. */
  blank?: boolean;
  /** Its mark of a formula that spills, or the lack of one, is right. */
  keepsMark?: boolean;
  /** The formula it had went, and the mark of a formula that spills goes with it. */
  losesMark?: boolean;
}

/** Puts formulas, style numbers and spill marks into cells that hold their values already. */
export function markCells(xml: string, finishes: readonly CellMark[], mark: string | undefined): string {
  if (finishes.length === 0) return xml;
  const sheet = scanWorksheet(xml, { strings: [], date1904: false, dynamicMetadata: new Set() });
  const placed = finishes.flatMap((finish) => {
    const i = sheet.index.get(cellKey(finish.row, finish.column));
    return i === undefined
      ? []
      : [{ finish, start: sheet.starts[i] as number, end: sheet.ends[i] as number }];
  });
  placed.sort((a, b) => a.start - b.start);
  let at = 0;
  const pieces: string[] = [];
  for (const { finish, start, end } of placed) {
    pieces.push(xml.slice(at, start), finished(xml.slice(start, end), finish, mark));
    at = end;
  }
  return [...pieces, xml.slice(at)].join('');
}

function finished(cell: string, finish: CellMark, mark: string | undefined): string {
  const { formula, fills, style, losesMark } = finish;
  let out = finish.blank ? emptied(cell) : cell;
  if (losesMark) out = withAttribute(out, 'cm', undefined);
  if (style !== undefined) out = withAttribute(out, 's', String(style));
  if (formula === undefined) return out;
  if (fills && mark !== undefined && !finish.keepsMark) out = withAttribute(out, 'cm', mark);
  return withFormula(out, formula, fills);
}

function emptied(cell: string): string {
  const reader = new XmlReader(cell);
  reader.next();
  const { tagEnd, empty } = reader;
  return withAttribute(empty ? cell : `${cell.slice(0, tagEnd - 1)}/>`, 't', undefined);
}

function withFormula(cell: string, formula: string, fills: Zone | undefined): string {
  const reader = new XmlReader(cell);
  reader.next();
  const { prefix, tagEnd, empty } = reader;
  const array = fills ? ` t="array" ref="${zoneAddress(fills)}"` : '';
  const element = `<${prefix}f${array}>${encodeString(formula)}</${prefix}f>`;
  if (!empty) return cell.slice(0, tagEnd) + element + cell.slice(tagEnd);
  return `${cell.slice(0, tagEnd - 2).trimEnd()}>${element}</${prefix}c>`;
}

/** The opening tag with an attribute set, or taken out. */
export function withAttribute(element: string, name: string, value: string | undefined): string {
  const reader = new XmlReader(element);
  reader.next();
  const bounds = reader.attributeBounds(name);
  if (bounds && value !== undefined)
    return element.slice(0, bounds.start) + value + element.slice(bounds.end);
  if (bounds) {
    const before = element.slice(0, bounds.start).replace(/\s+[\w:]+\s*=\s*["']$/, '');
    return before + element.slice(bounds.end + 1);
  }
  if (value === undefined) return element;
  const end = reader.tagEnd - (reader.empty ? 2 : 1);
  return `${element.slice(0, end).trimEnd()} ${name}="${value}"${element.slice(end)}`;
}
