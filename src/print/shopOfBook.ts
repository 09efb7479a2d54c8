import { InputError } from '../core/inputError.js';
import { type CellValue, isBlank } from '../core/quantity/cellValue.js';
import { headingNames, type Headings, readHeadings } from '../core/row/headings/readHeadings.js';
import { readShop, type Shop } from '../core/shop/readShop.js';
import { isStockTable } from '../core/shop/readStock.js';
import { type ShopRange, shopRanges } from '../core/shop/shopFormula.js';
import { nameKey } from '../core/shop/table.js';

export type Cells = readonly (readonly CellValue[])[];

/** A table of a workbook, its headings first. */
export interface BookTable {
  name: string;
  cells: Cells;
  /** The row of the sheet, from 1, of its headings, and those that are hidden there; where the file says so. */
  headingRow?: number;
  hidden?: ReadonlySet<number>;
}

/** What is read of a workbook file for a page or a plan. */
export interface Book {
  /** The formula of the cell named ShopStamp, with its equals sign. */
  stampFormula: string | undefined;
  /** The cells of a range that the formula names: a table with its headings; undefined where it is not there. */
  cells(range: ShopRange): Cells | undefined;
  tables: readonly BookTable[];
}

/** The shop of a workbook, the tables that are none of its own, and its Stock table. */
export interface BookShop {
  shop: Shop;
  /** Tables that may be parts lists. */
  lists: readonly BookTable[];
  stock: BookTable | undefined;
}

/** The shop of a workbook by its SHOP formula; or the sentence that says why there is none. */
export function readBookShop(book: Book): BookShop | { problem: string } {
  const { stampFormula } = book;
  if (stampFormula === undefined)
    return { problem: 'The workbook has no cell named ShopStamp with a SHOP formula: add the shop sheet.' };
  return refused(
    () => {
      const ranges = shopRanges(stampFormula);
      const missing = ranges.find((range) => range && !book.cells(range));
      if (missing)
        return { problem: `The SHOP formula names ${nameOf(missing)}, which is not in the workbook.` };
      const [presses, tools, grades, settings] = ranges.map((range) => range && book.cells(range));
      const own = new Set(ranges.flatMap((range) => (range?.kind === 'table' ? [nameKey(range.name)] : [])));
      const others = book.tables.filter(({ name }) => !own.has(nameKey(name)));
      return {
        shop: readShop({ presses: presses ?? [], tools, grades, settings }),
        lists: others.filter(({ name }) => !isStockTable(name)),
        stock: others.find(({ name }) => isStockTable(name)),
      };
    },
    (problem) => ({ problem }),
  );
}

/** The headings of a parts list; undefined for another table. */
export function headingsOf(names: readonly CellValue[]): Headings | undefined {
  return refused(
    () => readHeadings(names),
    () => undefined,
  );
}

/** The column of marks in a row of headings, with or without a section; undefined for another row. */
export function markColumn(names: readonly CellValue[]): number | undefined {
  const filled = names.filter((name) => !isBlank(name));
  if (filled.length < 2 || !filled.every((name) => typeof name === 'string')) return undefined;
  const at = headingNames(names).indexOf('Mark');
  return at < 0 ? undefined : at;
}

/** What is read, or what is said where it is refused. */
export function refused<Result, Other>(read: () => Result, say: (problem: string) => Other): Result | Other {
  try {
    return read();
  } catch (error) {
    if (error instanceof InputError) return say(error.message);
    throw error;
  }
}

function nameOf(range: ShopRange): string {
  return range.kind === 'cells' ? range.address : range.name;
}
