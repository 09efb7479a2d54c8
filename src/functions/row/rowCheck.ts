import { isBlank } from '../../core/quantity/cellValue.js';
import { memo } from '../../core/quantity/memo.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { defaultRowItems, readRowItems, rowItems } from '../../core/row/rowItem.js';
import type { ScalarArgument } from '../argument/argument.js';
import { shopArgument } from '../argument/shop.js';
import { rangeArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';
import { oneRow } from './oneRow.js';
import { reportItem, shownItem } from './shownItem.js';
import { ShownRow } from './shownRow.js';

/**
 * A row is asked for several items by several cells; it is checked once. Hosts calculate column by column, so all rows of
 * a long list are remembered: 80,000 with 400 characters each. Without a host the cells of a row come one after another.
 */
const remembered = memo<ShownRow>('Office' in globalThis ? 40_000_000 : 2_000_000);

/** As many rows as a quote has: their time is mostly asked for soon after their check. */
const mostWhole = 200;
const whole: ShownRow[] = [];
let oldest = 0;

/** Keeps a row whole until as many others came after it. */
function keptWhole(row: ShownRow): ShownRow {
  whole[oldest]?.letGo();
  whole[oldest] = row;
  oldest = (oldest + 1) % mostWhole;
  return row;
}

const itemArgument: ScalarArgument<ReturnType<typeof readRowItems> | undefined> = {
  kind: 'choice',
  meaning: 'What to show; verdict, use and note side by side when left out',
  dimensionality: 'scalar',
  optional: true,
  omitted: 'verdict, use, note',
  choices: rowItems.map(({ item, meaning }) => ({ value: item, meaning })),
  read: (value, { argument }) => (isBlank(value) ? undefined : readRowItems(String(value), argument)),
};

export const rowCheck = define({
  name: 'ROWCHECK',
  purpose: 'Checks one row of a parts list against the presses of the shop',
  arguments: {
    headings: rangeArgument('The row of headings: Mark, Qty, Section, Grade, Length, Hole …'),
    row: rangeArgument('The row of the part, the same columns'),
    shop: shopArgument,
    item: itemArgument,
  },
  result: 'cells',
  gives:
    'The item asked for, or verdict, share of rating and note side by side; blank for rows that are no parts, `No part` for one that says work.',
  errors: '#VALUE! when the headings have no Section column or do not fit the row.',
  source: 'each check names its own; see the functions of force, holes and edges',
  example:
    '=TONROW.ROWCHECK({"Mark","Section","Grade","Length"},{"C1","FB 3/8x4","A36",6},ShopStamp,"verdict")',
  compute({ headings, row, shop, item }, { unit }, working) {
    const { names, cells } = oneRow(headings, row);
    const items = item ?? defaultRowItems;
    const check = () => new ShownRow({ cells, headings: readHeadings(names), shop, unit }, working);
    const result = working
      ? check()
      : remembered(`${shop.hash}${unit}${JSON.stringify([names, cells])}`, () => keptWhole(check()));
    for (const each of [...items].reverse()) reportItem(result, each, working);
    return [items.map((each) => shownItem(result, each, unit))];
  },
});
