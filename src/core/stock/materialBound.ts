import type { Cutting } from './cutting.js';

/**
 * What the bars cost at least, by material: the pieces' sizes at the price of the stock that holds the most for it.
 *
 * Formula: ⌈Σ size · demand · min (cost / capacity)⌉
 * @param cutting items and stocks
 * @returns steps of cost
 * Valid for every cutting. Throws nothing.
 * @example materialBound(cutting)
 * Source: common practice.
 */
export function materialBound(cutting: Cutting): number {
  const usable = cutting.stocks.filter((stock) => stock.capacity > 0 && stock.available > 0);
  const needed = cutting.items.reduce((sum, item) => sum + item.size * item.demand, 0);
  const bounds = usable.map((stock) => (needed / stock.capacity) * stock.cost);
  // A little less, so that rounding never lifts it over a whole step.
  return bounds.length === 0 ? 0 : Math.ceil(Math.min(...bounds) * (1 - 1e-12) - 1e-9);
}
