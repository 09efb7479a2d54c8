import { isBlank, plainText } from '../../core/quantity/cellValue.js';
import { readHeadings } from '../../core/row/headings/readHeadings.js';
import { defaultRowItems, readRowItems, rowItems } from '../../core/row/rowItem.js';
import type { ScalarArgument } from '../argument/argument.js';
import { shopArgument } from '../argument/shop.js';
import { listArgument } from '../argument/text.js';
import { define, whenThere } from '../descriptor/descriptor.js';
import { type HostRow, plainRow } from '../descriptor/hostValue.js';
import { eachRow } from '../turns.js';
import { reportItem, rowToShow, shownItem } from './shownItem.js';

const itemsArgument: ScalarArgument<ReturnType<typeof readRowItems>> = {
  kind: 'items',
  meaning: 'What to show, with commas: verdict, use, note, minutes, cost …; any item of ROWCHECK',
  dimensionality: 'scalar',
  optional: true,
  omitted: 'verdict, use, note',
  read: (value, { argument }) =>
    isBlank(value) ? [...defaultRowItems] : readRowItems(String(value), argument),
};

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
    const headings = readHeadings(plainRow(titles));
    const markAt = headings.fields.mark?.at ?? -1;
    const title = items.map((item) => rowItems.find((each) => each.item === item)?.heading ?? item);
    const shown = (row: HostRow) => {
      const cells = plainRow(row);
      const result = rowToShow(cells, headings, shop);
      const [first] = items;
      if (first) reportItem(result, first, unit, working, plainText(String(cells[markAt] ?? '')));
      return items.map((item) => shownItem(result, item, unit));
    };
    return whenThere(eachRow(rows, shown, turns), (checked) => [title, ...checked]);
  },
});
