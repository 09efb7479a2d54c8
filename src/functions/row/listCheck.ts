import { type CellValue, isBlank, plainText } from '../../core/quantity/cellValue.js';
import { memo } from '../../core/quantity/memo.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { defaultRowItems, readRowItems, rowItems } from '../../core/row/rowItem.js';
import type { ScalarArgument } from '../argument/argument.js';
import { shopArgument } from '../argument/shop.js';
import { listArgument } from '../argument/text.js';
import { define, whenThere } from '../descriptor/descriptor.js';
import { type HostRow, plainRow } from '../descriptor/hostValue.js';
import { eachRow } from '../turns.js';
import { reportItem, shownItem } from './shownItem.js';
import { ShownRow } from './shownRow.js';

const itemsArgument: ScalarArgument<ReturnType<typeof readRowItems>> = {
  kind: 'items',
  meaning: 'What to show, with commas: verdict, use, note, minutes, cost …; any item of ROWCHECK',
  dimensionality: 'scalar',
  optional: true,
  omitted: 'verdict, use, note',
  read: (value, { argument }) =>
    isBlank(value) ? [...defaultRowItems] : readRowItems(String(value), argument),
};

type Shown = (string | number)[];

/** Lists whose rows are remembered: some hundred characters of shop, headings and items each. */
const mostLists = 4_000;
/** The items of as many rows as long lists have: 60,000 with 200 characters each. */
const mostOfList = 20_000_000;

/** What the rows of a list came to: an edit of one row leaves the others as they are. */
const remembered = memo<(cells: readonly CellValue[], check: () => Shown) => Shown>(mostLists);

function rowMemory() {
  const rows = memo<Shown>(mostOfList);
  return (cells: readonly CellValue[], check: () => Shown) => rows(JSON.stringify(cells), check);
}

export const listCheck = define({
  name: 'LISTCHECK',
  purpose: 'Checks a whole parts list against the presses of the shop',
  arguments: {
    list: listArgument('The parts list with its headings in the first row'),
    shop: shopArgument,
    items: itemsArgument,
  },
  result: 'cells',
  gives:
    'A heading row, then one row for each row of the list, in its order; blank for rows that are no parts, `No part` for one that says work.',
  errors: '#VALUE! when the first row has no Section column.',
  source: 'each check names its own; see the functions of force, holes and edges',
  example:
    '=TONROW.LISTCHECK({"Mark","Section","Grade","Length";"C1","FB 3/8x4","A36",6},ShopStamp,"verdict")',
  isCancelable: true,
  compute({ list, shop, items }, { unit, turns }, working) {
    const [titles = [], ...rows] = list;
    const headingCells = plainRow(titles);
    const headings = readHeadings(headingCells);
    const markAt = headings.fields.mark?.at ?? -1;
    const title = items.map((item) => rowItems.find((each) => each.item === item)?.heading ?? item);
    const check = (cells: CellValue[]) => {
      const result = new ShownRow({ cells, headings, shop, unit });
      const [first] = items;
      if (first) reportItem(result, first, working, plainText(String(cells[markAt] ?? '')));
      return items.map((item) => shownItem(result, item, unit));
    };
    const again = remembered(`${shop.hash}${unit}${JSON.stringify([headingCells, items])}`, rowMemory);
    const shown = (row: HostRow) => {
      const cells = plainRow(row);
      return working ? check(cells) : [...again(cells, () => check(cells))];
    };
    return whenThere(eachRow(rows, shown, turns), (checked) => [title, ...checked]);
  },
});
