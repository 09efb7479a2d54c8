import { checkRow } from '../../../core/row/checkRow.js';
import { readHeadings } from '../../../core/row/readHeadings.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';

export type PartCells = Readonly<Record<string, string>>;

/** The part held against every press of the shop, one result each. */
export function checkPart(part: PartCells, shop: Shop): { press: string; result: RowResult }[] {
  const filled = Object.entries(part).filter(([, text]) => text.trim() !== '');
  const headings = readHeadings([...new Set(['Section', ...filled.map(([heading]) => heading), 'Press'])]);
  const names = [...new Set(['Section', ...filled.map(([heading]) => heading)])];
  return shop.presses.map(({ name: press }) => ({
    press,
    result: checkRow([...names.map((heading) => part[heading]?.trim() ?? null), press], headings, shop),
  }));
}
