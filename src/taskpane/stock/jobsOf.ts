import { InputError } from '../../core/inputError.js';
import type { Shop } from '../../core/shop/readShop.js';
import { readStock } from '../../core/shop/readStock.js';
import type { StockJobs } from '../../core/stock/list/stockJob.js';
import { stockJobs } from '../../core/stock/list/stockJobs.js';
import type { StockSource } from './useStockSource.js';

/** What is asked for in the two steps. */
export interface StockChoice {
  /** The name of a list; all lists where it is empty. */
  list: string;
  withFailing: boolean;
  withOffPress: boolean;
  commonLengths: boolean;
}

export const firstChoice: StockChoice = {
  list: '',
  withFailing: true,
  withOffPress: true,
  commonLengths: false,
};

/** The jobs of the chosen lists, or the sentence that says why they cannot be read. */
export function jobsOf(
  source: StockSource,
  choice: StockChoice,
  shop: Shop,
): StockJobs | { problem: string } {
  const chosen = source.lists.filter(({ name }) => name === choice.list);
  const lists = (chosen.length > 0 ? chosen : source.lists).map(({ name, headings, values }) => ({
    name,
    headings,
    rows: values,
  }));
  try {
    return stockJobs(lists, shop, readStock(source.stock?.values, shop), {
      withoutFailing: !choice.withFailing,
      withoutOffPress: !choice.withOffPress,
      commonLengths: choice.commonLengths,
    });
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}
