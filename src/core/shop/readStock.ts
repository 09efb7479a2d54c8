import { InputError, refuse } from '../inputError.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { readCount } from '../quantity/readCount.js';
import { readLength } from '../quantity/readLength.js';
import { readNumber, refuseThousandsAmount } from '../quantity/readNumber.js';
import { mmPerFoot, type LengthUnit } from '../quantity/units.js';
import { readAnySection } from '../section/readAnySection.js';
import type { AnySection } from '../section/section.js';
import { massUnitPer } from './costSettings.js';
import { gradeOfShop } from './gradeOfShop.js';
import type { Shop } from './readShop.js';
import { type Cells, nameKey, readTable, type Table } from './table.js';
import { wordTable } from '../quantity/wordTable.js';

/** Names that the Stock table may have; the second where the first is taken. */
export const stockTableNames = ['Stock', 'ShopStock'] as const;

/** The columns of the Stock table; their names are part of the file format. */
export const stockColumns = [
  { name: 'Section', meaning: 'as a parts list writes it; must be there' },
  { name: 'Grade', meaning: 'blank is any grade' },
  { name: 'Length', meaning: 'that bars come in; must be there' },
  {
    name: 'Price',
    meaning:
      'of one bar, or with its unit: `12.50 per ft`, `40 per m`, `0.85 per lb`, `95 per cwt`, `1.60 per kg`',
  },
  { name: 'Available', meaning: 'bars on hand, `none` for none; blank is as many as needed' },
] as const;

/** What a bar costs. */
export type StockPrice = { perBar: number } | { perMm: number } | { perKg: number };

/** A length that bars of a section come in. */
export interface StockRow {
  /** Of the table, from 1. */
  row: number;
  section: AnySection;
  /** The name of the grade; any where it is missing. */
  grade?: string;
  lengthMm: number;
  price?: StockPrice;
  /** As many as needed where it is missing. */
  available?: number;
}

/** A row of the table that cannot be read. */
export interface UnreadStock {
  row: number;
  /** Missing where the section itself cannot be read. */
  section?: AnySection;
  /** `Stock row 3, Length: …` */
  sentence: string;
}

export interface StockRead {
  rows: readonly StockRow[];
  unread: readonly UnreadStock[];
}

/** Whether a table of a workbook is the Stock table, by its name. */
export function isStockTable(name: string): boolean {
  return stockTableNames.some((each) => nameKey(each) === nameKey(name));
}

/** Whether headings are those of a Stock table, which has a column Section and is no parts list. */
export function isStockHeadings(headings: readonly CellValue[]): boolean {
  const keys = new Set(headings.map(nameKey));
  const isStock = keys.has('price') || keys.has('available');
  return isStock && keys.has('section') && keys.has('length') && !keys.has('mark') && !keys.has('qty');
}

/**
 * Reads the Stock table: Section, Grade, Length, Price, Available. A row that cannot be read becomes a sentence; a blank
 * row is passed over. Throws where a heading that is needed is missing.
 */
export function readStock(cells: Cells | undefined, shop: Shop): StockRead {
  if (!cells) return { rows: [], unread: [] };
  const table = readTable(cells, 'Stock', ['Section', 'Length']);
  const rows: StockRow[] = [];
  const unread: UnreadStock[] = [];
  table.rows.forEach((cellsOfRow, index) => {
    if (stockColumns.every(({ name }) => isBlank(table.cell(cellsOfRow, name)))) return;
    const row = index + 1;
    const about = (name: string) => `Stock row ${row}, ${name}`;
    let section: AnySection | undefined;
    try {
      section = readAnySection(table.cell(cellsOfRow, 'Section'), about('Section'), shop.unit).section;
      rows.push({ row, section, ...stockLength(cellsOfRow, table, about, shop) });
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      unread.push({ row, sentence: error.messageInCell, ...(section ? { section } : {}) });
    }
  });
  return { rows, unread };
}

function stockLength(
  row: readonly CellValue[],
  table: Table,
  about: (name: string) => string,
  shop: Shop,
): Omit<StockRow, 'row' | 'section'> {
  const [grade, length, price, available] = ['Grade', 'Length', 'Price', 'Available'].map((name) =>
    table.cell(row, name),
  );
  return {
    ...(isBlank(grade) ? {} : { grade: gradeOfShop(grade ?? null, about('Grade'), shop).name }),
    lengthMm: readLength(length ?? null, about('Length'), shop.unit, 'length'),
    ...(isBlank(price) ? {} : { price: readPrice(price ?? null, about('Price'), shop.unit) }),
    ...(isBlank(available) ? {} : { available: readAvailable(available ?? null, about('Available')) }),
  };
}

const pricePer = /(?:\/|\bper)\s*(bar|ft|foot|m|kg|t|lb|cwt|ton)$/i;
const mmOf: Record<string, number> = wordTable({ ft: mmPerFoot, foot: mmPerFoot, m: 1000 });
const greatestPrice = 1e7;

/** A price of a bar, or of its length or mass: `18.40`, `2.10 per ft`, `95 per cwt`. */
export function readPrice(cell: CellValue, argument: string, unit: LengthUnit): StockPrice {
  const allowed =
    'Write the price of one bar such as 18.40, or with its unit: 0.92 per ft, 95 per cwt, 1.60 per kg.';
  const text = plainText(String(cell)).trim();
  const per = pricePer.exec(text);
  const word = per?.[1]?.toLowerCase() ?? 'bar';
  const bare = typeof cell === 'number' ? cell : text.slice(0, per?.index).trim();
  refuseThousandsAmount(bare, argument, unit);
  const price = readNumber(bare, argument, allowed);
  if (price <= 0 || price > greatestPrice) {
    return refuse(argument, text, `${quoted(cell)} is out of range.`, allowed);
  }
  const [lengthMm, massKg] = [mmOf[word], massUnitPer[word]];
  if (lengthMm !== undefined) return { perMm: price / lengthMm };
  return massKg === undefined ? { perBar: price } : { perKg: price / massKg };
}

/** Bars that can be had: a 0 is read as a blank cell, so `none` says that there are none. */
export function readAvailable(cell: CellValue, argument: string): number {
  const allowed = 'Write a whole number of bars, none, or leave it blank for as many as needed.';
  if (nameKey(cell) === 'none') return 0;
  const bars = readCount(cell, argument, allowed);
  if (Number.isInteger(bars) && bars > 0 && bars <= 1e6) return bars;
  return refuse(argument, String(cell), `${quoted(cell)} is not a number of bars.`, allowed);
}
