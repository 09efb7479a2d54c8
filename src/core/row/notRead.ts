import { type CellValue, meant } from '../quantity/cellValue.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Shop } from '../shop/readShop.js';
import type { Headings } from './headings/readHeadings.js';
import { holdsUnread, type UnreadColumn } from './headings/unreadWork.js';
import type { RowJob } from './job/rowJob.js';
import { isOtherSize, sizesGiven } from './sizesInText.js';
import { textsOfWork } from './textsOfWork.js';

/** What a row says in columns and texts that no check reads. */
export function notRead(
  cells: readonly CellValue[],
  headings: Headings,
  job: RowJob,
  shop: Shop,
): Pick<RowJob, 'unread' | 'texts'> {
  let sizes: readonly number[] | undefined;
  const given = () => (sizes ??= sizesGiven(cells, headings, job));
  const unread = headings.unread.filter(
    (column) =>
      holdsUnread(column, cells, shop.unit) ||
      differsFromRow(column, cells, {
        qty: job.qty,
        isCounted: headings.fields.qty !== undefined,
        given,
        unit: shop.unit,
      }),
  );
  const texts = textsOfWork(cells, headings, { given, job, shop }).filter(
    ({ at }) => !unread.some((column) => column.at === at),
  );
  return {
    ...(texts.length > 0 ? { texts } : {}),
    ...(unread.length > 0 ? { unread: unread.map(({ heading }) => heading) } : {}),
  };
}

/** Whether a column of sizes or counts that is not read says another one than the cells that are. */
function differsFromRow(
  { at, names, unit: stated, heading }: UnreadColumn,
  cells: readonly CellValue[],
  {
    qty,
    isCounted,
    given,
    unit,
  }: { qty: number; isCounted: boolean; given: () => readonly number[]; unit: LengthUnit },
): boolean {
  const cell = meant(cells[at]);
  if (cell === null) return false;
  if (names === 'size') return isOtherSize(cell, stated === undefined ? {} : { unit: stated }, given, unit);
  if (names === 'number') return !isCounted && Number(cell) > 1;
  if (names !== 'count' || !/\d/.test(String(cell)) || Number(cell) === 1) return false;
  return !(isOfAll(heading) && Number(cell) === qty);
}

/** `Total qty` is the same as Qty where the list is of one, and `REQ'D` is. */
const isOfAll = (heading: string) => /total|ext|req|quan|ea|pc/i.test(heading);
