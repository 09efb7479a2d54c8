import { inShopUnit } from '../../core/quantity/shopUnit.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { isWorkItem, type RowItem, rowItems } from '../../core/row/rowItem.js';
import type { NamedValue, Working } from '../../core/working/working.js';
import type { ShownRow } from './shownRow.js';

/** One item of a row as the sheet shows it, in the units of the shop. */
export function shownItem(row: ShownRow, item: RowItem, unit: LengthUnit): string | number {
  return shownQuantity(row.quantity(item), unit);
}

/** A quantity as a cell shows it. */
export function shownQuantity(
  { kind, value }: Pick<NamedValue, 'kind' | 'value'>,
  unit: LengthUnit,
): string | number {
  return typeof value === 'string' || kind === 'text' ? value : inShopUnit(value, kind, unit);
}

/** An item as the last step of a row's working, after the shares of its time; in a list the mark says whose. */
export function reportItem(row: ShownRow, item: RowItem, working: Working | undefined, mark = ''): void {
  if (!working) return;
  if (isWorkItem(item)) row.work(working);
  const described = rowItems.find((each) => each.item === item);
  working.step({
    title: [mark, described?.heading ?? item].filter((text) => text !== '').join(': '),
    formula: item === 'verdict' ? 'the worst of all checks' : (described?.meaning ?? item),
    values: [],
    result: { symbol: item, meaning: described?.meaning ?? item, ...row.quantity(item) },
    source: isWorkItem(item) ? 'the steps above' : 'the checks above',
  });
}
