import type { Zone } from '../../sheet/address.js';
import { readPieces } from '../../sheet/formula/pieces.js';
import { parseStructured, resolveStructured } from '../../sheet/formula/tableReference.js';
import { sameName } from '../../sheet/names.js';
import type { Area } from '../../workbook/area.js';
import type { Table } from '../../workbook/reading.js';

/**
 * The cells of a reference to a table: `Parts[[#Headers],[Mark]:[Press]]`, `Parts[@[Mark]:[Press]]`, `[@Hole]`,
 * `Parts[#All]`. Undefined where it is none, or names what is not there.
 */
export function structuredArea(text: string, cell: Area, tables: readonly Table[]): Area | undefined {
  const [piece, ...more] = readPieces(text);
  if (piece?.kind !== 'table' || more.length > 0) return undefined;
  const { name, bracket } = piece;
  const table = name === '' ? tableAt(cell, tables) : tables.find((each) => sameName(each.name, name));
  const reference = parseStructured(bracket.slice(1, -1));
  const zone = table && reference && resolveStructured(zoned(table), reference, cell.row);
  return zone && { sheet: table.area.sheet, ...areaOf(zone) };
}

/** A zone by its first cell and its size. */
export function areaOf({ top, left, bottom, right }: Zone): Omit<Area, 'sheet'> {
  return { row: top, column: left, rows: bottom - top + 1, columns: right - left + 1 };
}

export function tableAt(cell: Area, tables: readonly Table[]): Table | undefined {
  return tables.find(({ area: { sheet, row, column, rows, columns } }) => {
    const inRows = cell.row >= row && cell.row < row + rows;
    return sheet === cell.sheet && inRows && cell.column >= column && cell.column < column + columns;
  });
}

function zoned({ area: { row, column, rows, columns }, headings, hasTotals }: Table) {
  return {
    zone: { top: row, left: column, bottom: row + rows - 1, right: column + columns - 1 },
    headerRows: 1,
    totalsRows: hasTotals ? 1 : 0,
    columns: headings,
  };
}
