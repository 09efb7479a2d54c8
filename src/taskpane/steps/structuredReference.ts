import type { Area } from '../../workbook/area.js';
import type { Table } from '../../workbook/reading.js';

const reference = /^([^\s[\]'!,()"]*)\[(.*)\]$/s;

/**
 * The cells of a reference to a table: `Parts[[#Headers],[Mark]:[Press]]`, `Parts[@[Mark]:[Press]]`, `[@Hole]`,
 * `Parts[#All]`. Undefined where it is none, or names what is not there.
 */
export function structuredArea(text: string, cell: Area, tables: readonly Table[]): Area | undefined {
  const found = reference.exec(text);
  if (!found) return undefined;
  const [, name = '', inner = ''] = found;
  const table = name === '' ? tableAt(cell, tables) : tables.find((each) => sameName(each.name, name));
  const pieces = table && piecesOf(inner);
  if (!table || !pieces) return undefined;
  const columns = columnsOf(table, pieces.columns);
  const rows = rowsOf(table, pieces.items, cell);
  return columns && rows && { sheet: table.area.sheet, ...columns, ...rows };
}

export function tableAt(cell: Area, tables: readonly Table[]): Table | undefined {
  return tables.find(({ area: { sheet, row, column, rows, columns } }) => {
    const inRows = cell.row >= row && cell.row < row + rows;
    return sheet === cell.sheet && inRows && cell.column >= column && cell.column < column + columns;
  });
}

interface Pieces {
  items: string[];
  columns: string[];
}

/** `@[Mark]:[Press]` and `[#Headers],[Mark]:[Press]` in pieces; an apostrophe escapes the character behind it. */
function piecesOf(inner: string): Pieces | undefined {
  const pieces: Pieces = { items: [], columns: [] };
  let text = inner.trim();
  if (text.startsWith('@')) {
    pieces.items.push('#this row');
    text = text.slice(1).trim();
  }
  const add = (piece: string) => {
    if (piece.startsWith('#')) pieces.items.push(piece.trim().toLowerCase());
    else pieces.columns.push(piece.replaceAll(/'(.)/gs, '$1'));
  };
  if (text === '') return pieces;
  if (!text.startsWith('[')) {
    add(text);
    return pieces;
  }
  const bracketed = /\[((?:'.|[^'\]])*)\]\s*[,:]?\s*/gsy;
  for (let at = 0; at < text.length; at = bracketed.lastIndex) {
    bracketed.lastIndex = at;
    const piece = bracketed.exec(text)?.[1];
    if (piece === undefined) return undefined;
    add(piece);
  }
  return pieces;
}

function columnsOf({ area, headings }: Table, names: readonly string[]) {
  const [first, last = first] = names;
  if (first === undefined || last === undefined) return { column: area.column, columns: area.columns };
  const places = [first, last].map((name) => headings.findIndex((heading) => sameName(heading, name)));
  const from = Math.min(...places);
  return from < 0 ? undefined : { column: area.column + from, columns: Math.max(...places) - from + 1 };
}

function rowsOf({ area, hasTotals }: Table, items: readonly string[], cell: Area) {
  const data = { row: area.row + 1, rows: area.rows - 1 - (hasTotals ? 1 : 0) };
  const headings = { row: area.row, rows: 1 };
  const key = [...items].sort().join(' ');
  if (key === '' || key === '#data') return data;
  if (key === '#all') return { row: area.row, rows: area.rows };
  if (key === '#headers') return headings;
  if (key === '#data #headers') return { row: area.row, rows: data.rows + 1 };
  const inData = cell.row >= data.row && cell.row < data.row + data.rows;
  return key === '#this row' && inData ? { row: cell.row, rows: 1 } : undefined;
}

function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}
