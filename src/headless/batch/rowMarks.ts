import { markColumn } from '../../print/shopOfBook.js';
import { type CellValue, isCellError, type StoredValue } from '../../sheet/cellValue.js';
import type { Table } from '../../sheet/table.js';

/** A sheet whose rows have marks. */
interface MarkedSheet {
  width: number;
  value(row: number, column: number): StoredValue;
  /** The tables with headings on it. */
  tables: readonly Table[];
}

/** Cells looked at for headings where there is no table: a sheet of any size takes no longer than this. */
const mostCells = 1_000_000;

/** Finds the mark of a row: below the heading of its table, or of the nearest row of headings above it. */
export function rowMarks(sheet: MarkedSheet): (row: number, column: number) => string {
  /** The column of marks for each row looked at, outside tables. */
  const above = new Map<number, number | undefined>();
  let looked = 0;

  function columnIn(row: number, left: number, right: number): number | undefined {
    if ((looked += right - left + 1) > mostCells) return undefined;
    const cells = Array.from({ length: right - left + 1 }, (_, at) => plain(sheet.value(row, left + at)));
    const at = markColumn(cells);
    return at === undefined ? undefined : left + at;
  }

  function fromAbove(row: number): number | undefined {
    const passed: number[] = [];
    let found: number | undefined;
    for (let at = row - 1; at >= 0 && found === undefined && looked <= mostCells; at--) {
      if (above.has(at)) {
        found = above.get(at);
        break;
      }
      passed.push(at);
      found = columnIn(at, 0, sheet.width - 1);
    }
    for (const at of passed) above.set(at, found);
    return found;
  }

  const inTables = sheet.tables.map(({ zone }) => ({
    zone,
    column: columnIn(zone.top, zone.left, zone.right),
  }));

  return (row, column) => {
    const beside = inTables.filter(({ zone }) => zone.top < row && row <= zone.bottom);
    const own = beside.find(({ zone }) => zone.left <= column && column <= zone.right);
    const marked = own?.column === undefined ? beside.find((table) => table.column !== undefined) : own;
    const at = marked?.column ?? fromAbove(row);
    const mark = at === undefined ? '' : shown(sheet.value(row, at)).trim();
    return mark === '' ? `row ${row + 1}` : mark;
  };
}

const plain = (value: StoredValue): CellValue => (isCellError(value) ? value.error : value);

/** A value as a cell shows it. */
export const shown = (value: StoredValue): string => String(plain(value) ?? '');
