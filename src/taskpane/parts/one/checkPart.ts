import { checkedPart } from '../../../core/row/checkRow.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import type { RowResult } from '../../../core/row/rowResult.js';
import { type RowWorkResult, workOnChecked } from '../../../core/work/workOnRow.js';
import type { Shop } from '../../../core/shop/readShop.js';

export type PartCells = Readonly<Record<string, string>>;

export interface PartOnPress {
  press: string;
  result: RowResult;
  work: RowWorkResult;
}

/** The part checked against every press of the shop, one result each, with its time and cost there. */
export function checkPart(part: PartCells, shop: Shop): PartOnPress[] {
  const filled = Object.entries(part).filter(([, text]) => text.trim() !== '');
  const headings = readHeadings([...new Set(['Section', ...filled.map(([heading]) => heading), 'Press'])]);
  const names = [...new Set(['Section', ...filled.map(([heading]) => heading)])];
  return shop.presses.map(({ name: press }) => {
    const cells = [...names.map((heading) => part[heading]?.trim() ?? null), press];
    const checked = checkedPart(cells, headings, shop);
    return { press, result: checked.result, work: workOnChecked(checked, shop) };
  });
}
