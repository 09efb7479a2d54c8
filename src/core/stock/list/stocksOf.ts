import { gradeKey } from '../../material/gradeKey.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { StockPrice, StockRead, StockRow } from '../../shop/readStock.js';
import { commonLengthsMm } from './commonLengths.js';
import { sectionKey } from './sectionKey.js';
import type { JobStock, StockJob } from './stockJob.js';

type Bought = Pick<StockJob, 'section' | 'grade' | 'kgPerMm'>;

/**
 * The lengths that bars of a job come in: those of the Stock table for its section, of its grade or of any. Where it has none,
 * common lengths in the unit given; without a unit none.
 */
export function stocksOf(
  job: Bought,
  { rows, unread }: StockRead,
  unit: LengthUnit | undefined,
): Pick<StockJob, 'stocks' | 'origin'> {
  const own = rows.filter((row) => isFor(row, job));
  const isNamed =
    own.length > 0 ||
    unread.some(({ section }) => section && sectionKey(section) === sectionKey(job.section));
  if (!isNamed && unit !== undefined) {
    return { stocks: commonLengthsMm[unit].map((lengthMm) => ({ lengthMm })), origin: 'common lengths' };
  }
  const stocks = own.map((row) => stockOf(row, job));
  return { stocks: stocks.sort(compareStocks), origin: 'table' };
}

function isFor({ section, grade }: StockRow, job: Bought): boolean {
  const isGrade = grade === undefined || gradeKey(grade) === gradeKey(job.grade.name);
  return isGrade && sectionKey(section) === sectionKey(job.section);
}

function stockOf({ row, lengthMm, price, available }: StockRow, { kgPerMm }: Bought): JobStock {
  return {
    lengthMm,
    ...(price === undefined ? {} : { price: priceOfBar(price, lengthMm, kgPerMm) }),
    ...(available === undefined ? {} : { available }),
    row,
  };
}

function priceOfBar(price: StockPrice, lengthMm: number, kgPerMm: number): number {
  if ('perBar' in price) return price.perBar;
  return 'perMm' in price ? price.perMm * lengthMm : price.perKg * lengthMm * kgPerMm;
}

/** Of two of one length the cheaper first. */
function compareStocks(a: JobStock, b: JobStock): number {
  return (
    a.lengthMm - b.lengthMm ||
    (a.price ?? Infinity) - (b.price ?? Infinity) ||
    (a.available ?? Infinity) - (b.available ?? Infinity) ||
    (a.row ?? 0) - (b.row ?? 0) ||
    0
  );
}
