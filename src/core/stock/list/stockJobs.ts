import { readHeadings } from '../../row/headings/readHeadings.js';
import type { Shop } from '../../shop/readShop.js';
import type { StockRead } from '../../shop/readStock.js';
import { jobsOfRows } from './jobsOfRows.js';
import { listRow } from './listRow.js';
import type { StockJobOptions, StockJobs, StockList } from './stockJob.js';

/**
 * What is to be cut of parts lists, by section and grade as they are read: `L3X3X1/4` and `L 3 x 3 x .25` are one. The
 * order of rows makes no difference. Only blank rows are passed over; every other row is in a job, left out by name, or
 * told as what it is taken for.
 * @param lists parts lists, headings in any order, as the row checks read them
 * @param shop the shop; its settings give kerf, end trim, grip and the shortest drop kept
 * @param stock the Stock table of the shop
 * @param options what is left out, and whether common lengths are used
 * @returns the jobs, the rows left out, and those that are no parts; lengths in mm, angles in rad
 * Valid for every list with a column Section. Throws `invalid` for headings without one, and for a setting that cannot be
 *   read.
 * @example stockJobs([{ name: 'Parts', headings, rows }], shop, readStock(cells, shop)).jobs
 * Source: common practice, no source.
 */
export function stockJobs(
  lists: readonly StockList[],
  shop: Shop,
  stock: StockRead,
  options: StockJobOptions = {},
): StockJobs {
  const rows = lists.flatMap(({ name: list, headings: names, rows: all, hidden, headingRow = 0 }) => {
    const headings = readHeadings(names);
    return all.flatMap((cells, index) => {
      const onSheet = headingRow + index + 1;
      const place = { list, row: index + 1, onSheet, isHidden: hidden?.has(onSheet) ?? false };
      return listRow(cells, headings, place, shop) ?? [];
    });
  });
  return jobsOfRows(rows, shop, stock, options);
}
