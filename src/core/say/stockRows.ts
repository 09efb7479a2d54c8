import type { StockJobs } from '../stock/list/stockJob.js';
import { hiddenRowSentences } from './hiddenRows.js';
import { otherRowSentences } from './otherRows.js';
import { toldByList } from './toldByList.js';

/** Which hidden rows are planned, and which rows are not, since they are no parts; by list, with their numbers on the sheet. */
export function stockRowSentences({
  lists,
  hidden,
  others,
}: Pick<StockJobs, 'lists' | 'hidden' | 'others'>): string[] {
  const named = lists.map((name) => ({ name }));
  return toldByList(named, ({ name }) => {
    const unseen = hidden.filter(({ list }) => list === name).map(({ row }) => row);
    const own = others.filter(({ list }) => list === name);
    return [...hiddenRowSentences(unseen, 'planned'), ...otherRowSentences(own, 'not planned')];
  });
}
