import { slugMm } from '../cut/backGaugeSetting.js';
import type { Press } from '../press/press.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import { barLengthMm } from '../shop/barLengths.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { type StockBars, stockBars } from './stockBars.js';

/** The bars that so many pieces of a row are cut from; undefined without a length. */
export function barsOf(
  row: ReadyRow,
  pieces: number,
  press: Press,
  shop: Shop,
  working?: Working,
): StockBars | undefined {
  if (row.lengthMm === undefined) return undefined;
  const barMm = barLengthMm(setting(shop, 'barLengths'), row.section.designation, shop.unit);
  return stockBars({ pieces, pieceMm: row.lengthMm, lossMm: slugMm(row, press) ?? 0, barMm }, working);
}
