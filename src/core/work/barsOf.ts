import { type Press, pressValue } from '../press/press.js';
import type { ReadyRow } from '../row/readyRow.js';
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

/** What a cut of the press loses: the slug of a double-cut angle shear, none of a single blade; undefined where the press does not say. */
export function slugMm({ section }: Pick<ReadyRow, 'section'>, press: Press): number | undefined {
  if (section.kind !== 'angle') return 0;
  const slug = pressValue(press, 'angleShearSlug');
  if (slug.state === 'none') return 0;
  return slug.state === 'value' ? slug.value : undefined;
}
