import { refuse } from '../../core/inputError.js';
import { type CellValue, isBlank, quoted } from '../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { readAvailable, readPrice } from '../../core/shop/readStock.js';
import type { StockLength } from '../../core/stock/stockProblem.js';
import type { MatrixArgument, ReadContext } from '../argument/argument.js';
import {
  gradeOf,
  type Layout,
  listedRows,
  type ListedRow,
  type Named,
  namedBy,
  refuseUnread,
  requireOne,
  sectionOf,
} from './columns.js';

/** What bars can be had, shortest first. */
export interface ListedStocks {
  stocks: readonly StockLength[];
  section: Named | undefined;
  grade: Named | undefined;
}

const layout: Layout = {
  columns: ['length', 'price', 'available'],
  allowed: 'Give the length of bars in each row, then price and bars available.',
};
/** Lengths that bars come in; below headings as the Stock table has them. */
export const stocksArgument: MatrixArgument<ListedStocks> = {
  kind: 'bars',
  meaning:
    'Length of bars, price of one, bars available (none, or blank for any number) in columns, or under headings',
  dimensionality: 'matrix',
  optional: false,
  read: (cells, context) => stocksOf(listedRows(cells, layout, context), context),
};

function stocksOf(rows: readonly ListedRow[], { argument, unit }: ReadContext): ListedStocks {
  const read = rows.map((row) => ({ row: row.row, ...stockOf(row, argument, unit) }));
  const priced = read.filter(({ stock }) => stock.price !== undefined);
  const [unpriced] = read.filter(({ stock }) => stock.price === undefined);
  if (priced.length > 0 && unpriced) {
    const at = `${argument}, row ${unpriced.row}`;
    refuse(at, '', 'this length has no price and others have one.', 'Give each a price, or none.');
  }
  const [sections, grades] = [namedBy(read, (each) => each.section), namedBy(read, (each) => each.grade)];
  requireOne(sections, argument, 'section');
  requireOne(grades, argument, 'grade');
  return {
    stocks: read
      .map(({ stock }) => stock)
      .sort((a, b) => a.lengthMm - b.lengthMm || (a.price ?? 0) - (b.price ?? 0)),
    section: sections[0],
    grade: grades[0],
  };
}

interface ReadStock {
  stock: StockLength;
  section: Named | undefined;
  grade: Named | undefined;
}

function stockOf(listed: ListedRow, argument: string, unit: LengthUnit): ReadStock {
  const { reader, fields, row, other } = listed;
  const lengthMm = reader.length(fields.length, 'length');
  const section = sectionOf(listed);
  refuseUnread(listed, argument);
  const at = `${argument}, row ${row}`;
  if (lengthMm === undefined)
    return refuse(
      `${at}, Length`,
      '',
      'the cell is blank.',
      'Write the length of the bar, or clear the row.',
    );
  const price = priceOf(other('price', 'cost'), lengthMm, `${at}, Price`, unit);
  const had = other('available', 'on hand', 'in stock', 'qty', 'quantity');
  const available = isBlank(had) ? undefined : readAvailable(had, `${at}, Available`);
  return {
    stock: {
      lengthMm,
      ...(price === undefined ? {} : { price }),
      ...(available === undefined ? {} : { available }),
    },
    section,
    grade: gradeOf(listed),
  };
}

/** What one bar costs. */
function priceOf(value: CellValue, lengthMm: number, argument: string, unit: LengthUnit): number | undefined {
  if (isBlank(value)) return undefined;
  const price = readPrice(value, argument, unit);
  if ('perBar' in price) return price.perBar;
  if ('perMm' in price) return price.perMm * lengthMm;
  return refuse(
    argument,
    String(value),
    `${quoted(value)} is by mass.`,
    'Write the price of one bar, or of its length, such as 2.10 per ft.',
  );
}
