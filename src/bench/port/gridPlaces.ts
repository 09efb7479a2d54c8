import { sameName } from '../../sheet/names.js';
import type { CellPosition, UID } from '@odoo/o-spreadsheet';
import type { Zone } from '../../sheet/address.js';
import { type Area, cellAddress } from '../../workbook/area.js';
import type { Place } from '../../workbook/reading.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import type { GridBook } from '../book/gridBook.js';
import { rangeOfName } from '../../sheet/formula/rangeOfName.js';

/** The grid's id of a sheet that must be there. */
export function sheetIdFor(book: GridBook, sheet: string): UID {
  const id = book.sheetIdOf(sheet);
  if (id === undefined) throw new WorkbookError('missing', `There is no sheet "${sheet}".`);
  return id;
}

export const zoneOf = ({ row, column, rows, columns }: Area): Zone => ({
  top: row,
  bottom: row + rows - 1,
  left: column,
  right: column + columns - 1,
});

export const areaOf = (sheet: string, { top, bottom, left, right }: Zone): Area => ({
  sheet,
  row: top,
  column: left,
  rows: bottom - top + 1,
  columns: right - left + 1,
});

/** The area of a place, with its sheet named as the workbook names it. */
export function areaOfPlace(place: Place, book: GridBook): Area {
  if ('table' in place) return tablePart(place, book);
  if ('name' in place) return namedArea(place.name, book);
  if ('usedOf' in place) {
    const zone = book.usedZone(sheetIdFor(book, place.usedOf));
    return zone
      ? areaOf(place.usedOf, zone)
      : { sheet: place.usedOf, row: 0, column: 0, rows: 0, columns: 0 };
  }
  sheetIdFor(book, place.sheet);
  return place;
}

function tablePart({ table: name, part }: Extract<Place, { table: string }>, book: GridBook): Area {
  const table = tableFor(book, name);
  const area = areaOf(book.sheetName(table.sheetId) ?? '', table.zone);
  if (part === 'headings') return { ...area, rows: 1 };
  if (part !== 'data') return area;
  const { headerRows, totalsRows } = table;
  return { ...area, row: area.row + headerRows, rows: area.rows - headerRows - totalsRows };
}

export function tableFor(book: GridBook, name: string) {
  const table = book.tables.find(name);
  if (!table) throw new WorkbookError('missing', `There is no table "${name}".`);
  return table;
}

function namedArea(name: string, book: GridBook): Area {
  const found = book.names().find((one) => sameName(one.name, name));
  const range = found && rangeOfName(found.text);
  if (!range) throw new WorkbookError('missing', `There is no name "${name}".`);
  return areaOf(range.sheet, range.zone);
}

/** What a function gives for every cell of an area, row by row. */
export function eachCell<Value>(
  book: GridBook,
  area: Area,
  of: (position: CellPosition) => Value,
): Value[][] {
  const sheetId = sheetIdFor(book, area.sheet);
  return Array.from({ length: area.rows }, (_, row) =>
    Array.from({ length: area.columns }, (__, column) =>
      of({ sheetId, row: area.row + row, col: area.column + column }),
    ),
  );
}

export const where = (area: Area): string => `${cellAddress(area)} on sheet "${area.sheet}"`;
