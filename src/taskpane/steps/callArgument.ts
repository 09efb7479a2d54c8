import type { CellValue } from '../../core/quantity/cellValue.js';
import { parseZone } from '../../sheet/address.js';
import { readPieces } from '../../sheet/formula/pieces.js';
import { sameName } from '../../sheet/names.js';
import type { Area } from '../../workbook/area.js';
import type { Place, Table } from '../../workbook/reading.js';
import { areaOf, structuredArea } from './structuredReference.js';

/** An argument as written: a constant, a place to read, or a calculation of its own. */
export type CallArgument =
  | { kind: 'values'; values: CellValue[][] }
  | { kind: 'place'; place: Place }
  | { kind: 'calculation'; text: string };

const number = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?%?$/i;
const text = /^"((?:[^"]|"")*)"$/;

/** What an argument of a call in a cell is. */
export function callArgument(written: string, cell: Area, tables: readonly Table[]): CallArgument {
  const constant = constantOf(written);
  if (constant !== undefined) return { kind: 'values', values: [[constant]] };
  const array = /^\{(.*)\}$/s.exec(written)?.[1];
  if (array !== undefined) return arrayOf(array, written);
  const place = placeOf(written, cell, tables);
  return place ? { kind: 'place', place } : { kind: 'calculation', text: written };
}

/** A name, a table, its parts, or cells by address; undefined where an argument is more than that. */
function placeOf(written: string, cell: Area, tables: readonly Table[]): Place | undefined {
  const [piece, ...more] = readPieces(written);
  if (!piece || more.length > 0) return undefined;
  if (piece.kind === 'table') return structuredArea(written, cell, tables);
  if (piece.kind === 'name' && /^[\p{L}_\\]/u.test(written) && piece.sheet === undefined) {
    const isTable = tables.some(({ name }) => sameName(name, written));
    return isTable ? { table: written, part: 'data' } : { name: written };
  }
  const zone = piece.kind === 'cells' ? parseZone(piece.text.slice(piece.prefix.length)) : undefined;
  // Another workbook, or several sheets, cannot be read.
  if (!zone || piece.kind !== 'cells' || /[[:]/.test(piece.sheet ?? '')) return undefined;
  return { sheet: piece.sheet ?? cell.sheet, ...areaOf(zone) };
}

function constantOf(written: string): CellValue | undefined {
  if (written === '') return null;
  if (number.test(written))
    return written.endsWith('%') ? Number(written.slice(0, -1)) / 100 : Number(written);
  if (/^(?:true|false)$/i.test(written)) return written.toLowerCase() === 'true';
  return text.exec(written)?.[1]?.replaceAll('""', '"');
}

/** `{"Mark","Section";"C1","FB 3/8x4"}`: rows by semicolons, constants only. */
function arrayOf(inner: string, written: string): CallArgument {
  const item = /("(?:[^"]|"")*"|[^",;]+)([,;]|$)/gy;
  const rows: CellValue[][] = [[]];
  for (let at = 0; at < inner.length; at = item.lastIndex) {
    item.lastIndex = at;
    const found = item.exec(inner);
    const value = found && constantOf((found[1] ?? '').trim());
    if (!found || value === undefined) return { kind: 'calculation', text: written };
    rows.at(-1)?.push(value);
    if (found[2] === ';') rows.push([]);
  }
  return { kind: 'values', values: rows };
}
