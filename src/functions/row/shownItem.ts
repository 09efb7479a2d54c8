import type { LengthUnit } from '../../core/quantity/units.js';
import { type RowItem, rowItems } from '../../core/row/rowItem.js';
import { rowItemQuantity } from '../../core/say/rowItemQuantity.js';
import type { RowResult } from '../../core/row/rowResult.js';
import type { Working } from '../../core/working/working.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';

/** One item of a row as the sheet shows it, in the units of the shop. */
export function shownItem(row: RowResult, item: RowItem, unit: LengthUnit): string | number {
  const { kind, value } = rowItemQuantity(row, item, unit);
  return typeof value === 'string' || kind === 'text' ? value : inShopUnit(value, kind, unit);
}

/** An item as the last step of a row's working; in a list the mark says whose. */
export function reportItem(
  row: RowResult,
  item: RowItem,
  unit: LengthUnit,
  working: Working | undefined,
  mark = '',
): void {
  if (!working) return;
  const described = rowItems.find((each) => each.item === item);
  working.step({
    title: [mark, described?.heading ?? item].filter((text) => text !== '').join(': '),
    formula: item === 'verdict' ? 'the worst of all checks' : (described?.meaning ?? item),
    values: [],
    result: { symbol: item, meaning: described?.meaning ?? item, ...rowItemQuantity(row, item, unit) },
    source: 'the checks above',
  });
}
