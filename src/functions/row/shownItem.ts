import type { CellValue } from '../../core/quantity/cellValue.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Headings } from '../../core/row/headings/readHeadings.js';
import { type CheckedPart, checkedPart } from '../../core/row/checkRow.js';
import { isWorkItem, type RowItem, rowItems } from '../../core/row/rowItem.js';
import { rowItemQuantity } from '../../core/say/rowItemQuantity.js';
import { workItemQuantity } from '../../core/say/workItemQuantity.js';
import type { RowResult } from '../../core/row/rowResult.js';
import type { Shop } from '../../core/shop/readShop.js';
import { type RowWorkResult, workOnChecked } from '../../core/work/workOnRow.js';
import type { NamedValue, Working } from '../../core/working/working.js';

/** One row of a list, checked once; its time and cost are worked out once, when they are asked for. */
export interface ShownRow {
  result: RowResult;
  work(working?: Working): RowWorkResult;
}

/** As many rows as a quote has: their time is mostly asked for soon after their check. */
const mostParts = 200;
const letGo: (() => void)[] = [];
let oldest = 0;

/**
 * Checks a row of a list for its items. The part it was checked as is kept for a while, and made again where its time is
 * asked for later: rows are remembered by the thousand, and a part is large.
 */
export function rowToShow(
  cells: readonly CellValue[],
  headings: Headings,
  shop: Shop,
  working?: Working,
): ShownRow {
  const checked = checkedPart(cells, headings, shop, working);
  let kept: CheckedPart | undefined = checked;
  letGo[oldest]?.();
  letGo[oldest] = () => (kept = undefined);
  oldest = (oldest + 1) % mostParts;
  let known: RowWorkResult | undefined;
  const work = (asked?: Working) => workOnChecked(kept ?? checkedPart(cells, headings, shop), shop, asked);
  return {
    result: checked.result,
    work: (asked) => (asked ? work(asked) : (known ??= work())),
  };
}

function quantityOf(row: ShownRow, item: RowItem, unit: LengthUnit): Pick<NamedValue, 'kind' | 'value'> {
  return isWorkItem(item) ? workItemQuantity(row.work(), item) : rowItemQuantity(row.result, item, unit);
}

/** One item of a row as the sheet shows it, in the units of the shop. */
export function shownItem(row: ShownRow, item: RowItem, unit: LengthUnit): string | number {
  return shownQuantity(quantityOf(row, item, unit), unit);
}

/** A quantity as a cell shows it. */
export function shownQuantity(
  { kind, value }: Pick<NamedValue, 'kind' | 'value'>,
  unit: LengthUnit,
): string | number {
  return typeof value === 'string' || kind === 'text' ? value : inShopUnit(value, kind, unit);
}

/** An item as the last step of a row's working, after the shares of its time; in a list the mark says whose. */
export function reportItem(
  row: ShownRow,
  item: RowItem,
  unit: LengthUnit,
  working: Working | undefined,
  mark = '',
): void {
  if (!working) return;
  if (isWorkItem(item)) row.work(working);
  const described = rowItems.find((each) => each.item === item);
  working.step({
    title: [mark, described?.heading ?? item].filter((text) => text !== '').join(': '),
    formula: item === 'verdict' ? 'the worst of all checks' : (described?.meaning ?? item),
    values: [],
    result: { symbol: item, meaning: described?.meaning ?? item, ...quantityOf(row, item, unit) },
    source: isWorkItem(item) ? 'the steps above' : 'the checks above',
  });
}
