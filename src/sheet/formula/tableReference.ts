import { sameName } from '../names.js';
import type { Zone } from '../address.js';
import type { Table } from '../table.js';

/** What counts of a table here. */
type TableShape = Pick<Table, 'zone' | 'headerRows' | 'totalsRows' | 'columns'>;

/** A structured reference in pieces: `Parts[[#Headers],[Mark]:[Press]]`. */
export interface StructuredReference {
  items: string[];
  first: string | undefined;
  last: string | undefined;
}

/** Where the bracket that opens at `start` closes, or -1; `'` escapes the character after it. */
export function bracketEnd(text: string, start: number): number {
  let depth = 0;
  for (let at = start; at < text.length; at++) {
    const c = text[at];
    if (c === "'") at++;
    else if (c === '[') depth++;
    else if (c === ']' && --depth === 0) return at;
  }
  return -1;
}

const unescape = (text: string) => text.replace(/'(.)/gs, '$1');

/** Reads what stands between the outer brackets; undefined when it is not a structured reference. */
export function parseStructured(inner: string): StructuredReference | undefined {
  const reference: StructuredReference = { items: [], first: undefined, last: undefined };
  let text = inner.trim();
  if (text.startsWith('@')) {
    reference.items.push('#THIS ROW');
    text = text.slice(1).trim();
  }
  if (text === '') return reference;
  if (!text.startsWith('[')) {
    if (text.startsWith('#')) reference.items.push(text.toUpperCase());
    else reference.first = reference.last = unescape(text);
    return reference;
  }
  return parsePieces(text, reference);
}

/** No reference names more parts of a table than it has. */
const mostItems = 8;

function parsePieces(text: string, reference: StructuredReference): StructuredReference | undefined {
  let at = 0;
  let joined = false;
  while (at < text.length) {
    const end = text[at] === '[' ? bracketEnd(text, at) : -1;
    if (end < 0) return undefined;
    const piece = text.slice(at + 1, end);
    if (reference.items.length >= mostItems) return undefined;
    if (piece.startsWith('#')) reference.items.push(piece.trim().toUpperCase());
    else if (joined) reference.last = unescape(piece);
    else reference.first = reference.last = unescape(piece);
    const rest = text.slice(end + 1);
    const separator = /^\s*([,:])\s*/.exec(rest);
    if (!separator) return rest.trim() === '' ? reference : undefined;
    joined = separator[1] === ':';
    at = end + 1 + separator[0].length;
  }
  return undefined;
}

/** The columns and rows a structured reference names; undefined when the table has no such column or row. */
export function resolveStructured(
  table: TableShape,
  reference: StructuredReference,
  row: number,
): Zone | undefined {
  const columns = columnsOf(table, reference);
  const rows = rowsOf(table, reference.items, row);
  return columns && rows && { ...columns, ...rows };
}

function columnsOf(
  table: TableShape,
  { first, last }: StructuredReference,
): { left: number; right: number } | undefined {
  if (first === undefined) return { left: table.zone.left, right: table.zone.right };
  const a = columnIndex(table, first);
  const b = columnIndex(table, last ?? first);
  if (a < 0 || b < 0) return undefined;
  return { left: table.zone.left + Math.min(a, b), right: table.zone.left + Math.max(a, b) };
}

const columnPlaces = new WeakMap<readonly string[], Map<string, number>>();

function columnIndex({ columns }: TableShape, name: string): number {
  const known = columnPlaces.get(columns)?.get(name.toLowerCase());
  if (known !== undefined && sameName(columns[known] ?? '', name)) return known;
  const places = new Map<string, number>();
  columns.forEach((column, at) => {
    if (!places.has(column.toLowerCase())) places.set(column.toLowerCase(), at);
  });
  columnPlaces.set(columns, places);
  return places.get(name.toLowerCase()) ?? -1;
}

function rowsOf(
  table: TableShape,
  items: string[],
  row: number,
): { top: number; bottom: number } | undefined {
  const { zone } = table;
  const firstData = zone.top + table.headerRows;
  const lastData = zone.bottom - table.totalsRows;
  const spans: { top: number; bottom: number }[] = [];
  for (const item of items.length > 0 ? items : ['#DATA']) {
    if (item === '#ALL') spans.push({ top: zone.top, bottom: zone.bottom });
    else if (item === '#DATA') spans.push({ top: firstData, bottom: lastData });
    else if (item === '#HEADERS' && table.headerRows > 0)
      spans.push({ top: zone.top, bottom: firstData - 1 });
    else if (item === '#TOTALS' && table.totalsRows > 0)
      spans.push({ top: lastData + 1, bottom: zone.bottom });
    else if (item === '#THIS ROW' && row >= firstData && row <= lastData)
      spans.push({ top: row, bottom: row });
    else return undefined;
  }
  return {
    top: spans.reduce((least, { top }) => Math.min(least, top), Infinity),
    bottom: spans.reduce((most, { bottom }) => Math.max(most, bottom), -Infinity),
  };
}
