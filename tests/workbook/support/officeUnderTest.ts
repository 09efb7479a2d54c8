import { ExcelWorkbook } from '../../../src/workbook/excel/excelWorkbook.js';
import type { Area } from '../../../src/workbook/area.js';
import { TellingOwnWrites } from '../../../src/workbook/ownWrites.js';
import type { Hands, UnderTest } from '../contract/underTest.js';
import { OfficeHost } from './officeHost.js';

export interface OfficeUnderTest extends UnderTest {
  workbook: ExcelWorkbook;
  host: OfficeHost;
}

/** As `openOffice`, over a host that says nothing of the add-in's own writes: they are told on the way to it. */
export async function openQuietOffice(): Promise<UnderTest> {
  const { workbook, hands, host } = await openOffice();
  host.tellsOwnWrites = false;
  return { workbook: new TellingOwnWrites(workbook), hands };
}

/** The implementation for the platform, over the platform's own proxy objects and a double of its host. */
export async function openOffice(): Promise<OfficeUnderTest> {
  const host = new OfficeHost();
  host.book.addSheet('Parts');
  return { workbook: new ExcelWorkbook(), host, hands: handsOn(host) };
}

function handsOn(host: OfficeHost): Hands {
  const { book } = host;
  const each = ({ row, column, rows, columns }: Area, at: (row: number, column: number) => void) => {
    for (let down = 0; down < rows; down += 1)
      for (let right = 0; right < columns; right += 1) at(row + down, column + right);
  };
  return {
    addSheet: async (name) => void book.addSheet(name),
    type: async (area, rows) =>
      each(area, (row, column) =>
        book.sheet(area.sheet).enter(row, column, rows[row - area.row]?.[column - area.column] ?? null),
      ),
    format: async (area, format) => {
      const sheet = book.sheet(area.sheet);
      each(area, (row, column) => sheet.put(row, column, { ...sheet.at(row, column), format }));
    },
    addTable: async (name, area) => book.rename(book.addTable(area), name),
    addName: async (name, area) => book.addName(name, area),
    merge: async (area) => void book.sheet(area.sheet).merged.push(area),
    hide: async (sheet, rows) => rows.forEach((row) => book.sheet(sheet).hiddenRows.add(row)),
    merged: (sheet) => [...book.sheet(sheet).merged],
    protect: async (sheet) => void (book.sheet(sheet).protected = true),
    unprotect: async (sheet) => void (book.sheet(sheet).protected = false),
    select: (area) => host.select(area),
    edit: (area, input, author) => host.edit(area, input, author),
    calculate: (area) => host.calculate(area),
    width: (sheet, column) => {
      const points = book.sheet(sheet).widths.get(column);
      // Seven pixels a character and five around them; four pixels are three points.
      return points === undefined ? undefined : ((points * 4) / 3 - 5) / 7;
    },
    look: (sheet, row, column) => {
      const { value, formula, format } = book.sheet(sheet).at(row, column);
      return { value, format, ...(formula === undefined ? {} : { formula }) };
    },
  };
}
