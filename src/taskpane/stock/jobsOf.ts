import { InputError } from '../../core/inputError.js';
import type { Shop } from '../../core/shop/readShop.js';
import { readStock } from '../../core/shop/readStock.js';
import { jobsOfRows } from '../../core/stock/list/jobsOfRows.js';
import type { ListRow, OtherListRow } from '../../core/stock/list/listRow.js';
import type { StockJobs } from '../../core/stock/list/stockJob.js';
import type { StockSource } from './useStockSource.js';

/** What is asked for in the two steps. */
export interface StockChoice {
  /** The name of a list; all lists where it is empty. */
  list: string;
  withFailing: boolean;
  withOffPress: boolean;
  withHidden: boolean;
  commonLengths: boolean;
}

export const firstChoice: StockChoice = {
  list: '',
  withFailing: true,
  withOffPress: true,
  withHidden: true,
  commonLengths: false,
};

/** The jobs of checked rows, or the sentence that says why they cannot be planned. */
export function jobsOf(
  rows: readonly (ListRow | OtherListRow)[],
  stock: StockSource['stock'],
  choice: StockChoice,
  shop: Shop,
): StockJobs | { problem: string } {
  try {
    return jobsOfRows(rows, shop, readStock(stock?.values, shop), {
      withoutFailing: !choice.withFailing,
      withoutOffPress: !choice.withOffPress,
      withoutHidden: !choice.withHidden,
      commonLengths: choice.commonLengths,
    });
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}
