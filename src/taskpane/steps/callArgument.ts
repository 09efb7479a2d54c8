import type { CellValue } from '../../core/quantity/cellValue.js';
import { type Area, readAddresses } from '../../workbook/area.js';
import type { Place, Table } from '../../workbook/reading.js';
import { structuredArea } from './structuredReference.js';

/** An argument as written: a constant, a place to read, or a calculation of its own. */
export type CallArgument =
  | { kind: 'values'; values: CellValue[][] }
  | { kind: 'place'; place: Place }
  | { kind: 'calculation'; text: string };

const number = /^[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?%?$/i;
const text = /^"((?:[^"]|"")*)"$/;
const address =
  /^(?:(?:'(?:[^']|'')+'|[^\s'![\](),"{}+*/^&=<>-]+)!)?\$?[A-Z]{1,3}\$?\d{1,7}(?::\$?[A-Z]{1,3}\$?\d{1,7})?$/i;
const name = /^[\p{L}_\\][\p{L}\d_.\\]*$/u;

/** What an argument of a call in a cell is. */
export function callArgument(written: string, cell: Area, tables: readonly Table[]): CallArgument {
  const constant = constantOf(written);
  if (constant !== undefined) return { kind: 'values', values: [[constant]] };
  const array = /^\{(.*)\}$/s.exec(written)?.[1];
  if (array !== undefined) return arrayOf(array, written);
  if (address.test(written)) {
    const [place] = readAddresses(upperCells(written), cell.sheet);
    if (place) return { kind: 'place', place };
  }
  const area = structuredArea(written, cell, tables);
  if (area) return { kind: 'place', place: area };
  if (tables.some((table) => table.name.toLowerCase() === written.toLowerCase()))
    return { kind: 'place', place: { table: written, part: 'data' } };
  if (name.test(written)) return { kind: 'place', place: { name: written } };
  return { kind: 'calculation', text: written };
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

/** Cell letters in upper case, as addresses are read; the sheet's name as it is. */
function upperCells(written: string): string {
  const bang = written.lastIndexOf('!') + 1;
  return written.slice(0, bang) + written.slice(bang).toUpperCase();
}
