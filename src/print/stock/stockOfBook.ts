import { InputError } from '../../core/inputError.js';
import { readStock } from '../../core/shop/readStock.js';
import { planJobs, type PlanProblem, whyUnplanned } from '../../core/stock/list/planJobs.js';
import { planJson } from '../../core/stock/list/planJson.js';
import type { ListPlan } from '../../core/stock/list/jobPlan.js';
import type { LeftOut, StockJobOptions } from '../../core/stock/list/stockJob.js';
import { stockJobs } from '../../core/stock/list/stockJobs.js';
import { totalStatusWords } from '../../core/stock/list/planWords.js';
import { planStock } from '../../core/stock/planStock.js';
import { stockSheet } from '../../core/stock/sheet/stockSheet.js';
import type { SheetContent } from '../../core/stock/sheet/sheetCell.js';
import { type Book, headingsOf, readBookShop } from '../shopOfBook.js';

export { stockSheetTitle } from '../../core/stock/sheet/stockSheet.js';

/** The stock plan of a workbook; or the sentence that says why there is none. */
export type BookStock =
  | {
      sheet: SheetContent;
      json: Record<string, unknown>;
      /** How good the plan is, in one sentence. */
      status: string;
      /** Whether every row that can be cut from bars is. */
      isWhole: boolean;
    }
  | { problem: string };

export interface BookStockOptions extends StockJobOptions {
  /** Hears of each section before it is planned. */
  onSection?: (section: string, at: number, of: number) => void;
  plan?: PlanProblem;
}

/** Plans the bars of all parts lists of a workbook together. */
export async function stockOfBook(book: Book, options: BookStockOptions = {}): Promise<BookStock> {
  const read = readBookShop(book);
  if ('problem' in read) return read;
  const lists = read.lists.flatMap(({ name, cells: [headings = [], ...rows], headingRow, hidden }) =>
    headingsOf(headings)
      ? [{ name, headings, rows, ...(headingRow && { headingRow }), ...(hidden && { hidden }) }]
      : [],
  );
  if (lists.length === 0)
    return { problem: 'There is no list of parts: make the list a table, with a column Section.' };
  try {
    const jobs = stockJobs(lists, read.shop, readStock(read.stock?.cells, read.shop), options);
    if (jobs.jobs.length === 0)
      return { problem: 'No row of the list is cut from bars: there is nothing to plan.' };
    const planned = jobs.jobs.filter((job) => whyUnplanned(job) === undefined);
    const plan = options.plan ?? ((problem) => planStock(problem));
    const listPlan = await planJobs(jobs, read.shop, (problem, job) => {
      options.onSection?.(job.section.designation, planned.indexOf(job) + 1, planned.length);
      return plan(problem, job);
    });
    return {
      sheet: stockSheet(listPlan),
      json: planJson(listPlan),
      status: totalStatusWords(listPlan),
      isWhole: isWhole(listPlan),
    };
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}

const meant: readonly LeftOut['is'][] = ['plate', 'bought', 'asked'];

function isWhole({ planned, unplanned, left, unreadable }: ListPlan): boolean {
  return (
    unplanned.length === 0 &&
    unreadable.length === 0 &&
    planned.every(({ shortages }) => shortages.length === 0) &&
    left.every(({ why }) => meant.includes(why.is))
  );
}
