import { refuseBadCell } from '../../core/press/refuseBadCell.js';
import { stationOf } from '../../core/press/stationOf.js';
import type { CellValue } from '../../core/quantity/cellValue.js';
import { runSetupWords } from '../../core/say/runSetupWords.js';
import { sentencesOf } from '../../core/say/sentencesOf.js';
import { toolOrderWords } from '../../core/say/toolOrderWords.js';
import type { Changes } from '../../core/setup/toolOrder/changes.js';
import type { Ordered } from '../../core/setup/toolOrder/toolOrder.js';
import { findPress } from '../../core/shop/findPress.js';
import { toolText } from '../../core/shop/toolText.js';
import { listToolOrder } from '../../core/work/listToolOrder.js';
import { runSetup } from '../../core/work/runSetup.js';
import { textValue } from '../../core/working/namedValue.js';
import type { Working } from '../../core/working/working.js';
import { shopArgument } from '../argument/shop.js';
import { rangeArgument, textArgument } from '../argument/text.js';
import { define } from '../descriptor/descriptor.js';
import { noListOfTools } from './toolPick.js';

const titles = ['Mark', 'Holder', 'Punch', 'Die', 'Changes so far'];
const source =
  'fewest changes: Held and Karp, 1962 (from memory), up to 14 marks of different tools; beyond that common practice, no source';

export const toolOrder = define({
  name: 'TOOLORDER',
  purpose: 'The order of the marks of a list with the fewest changes of holder, then of punch or die',
  arguments: {
    list: rangeArgument('The parts list with its headings in the first row'),
    press: textArgument('Name of the press', 'the name of a press of the shop'),
    shop: shopArgument,
  },
  result: 'cells',
  gives:
    'A heading row; a row for each mark and its tools, in order, with the changes of tools so far; the marks that are left out, with the reason; then what it takes and whether any order takes less; last the minutes of setting up the run once. In the count, what stands in the press first is no change. A mark without a Press is taken on this one.',
  errors:
    '#N/A for a press that is not in the shop; #VALUE! when the first row has no Section column, and with the reason for a press cell that cannot be read.',
  source,
  example:
    '=TONROW.TOOLORDER({"Mark","Section","Grade","Length","Hole";"C1","FB 3/8x4","A36",6,"13/16"},"Bay A",ShopStamp)',
  compute({ list, press, shop }, { unit }, working) {
    const found = findPress(press, 'Press', shop);
    const [station] = stationOf(found, 'punch', working).findings;
    refuseBadCell(station);
    if (station) return told([], sentencesOf([station], unit).join(' '), working);
    if (!shop.tools) return told([], noListOfTools, working);
    const ordered = listToolOrder(list, found, shop);
    const { byMark, byTool, better } = ordered.order;
    orderStep('Finish each mark', byMark, working);
    orderStep('All marks of a tool', byTool, working);
    const rows = (better === 'tool' ? byTool : byMark).operations.map(({ mark, set, soFar }): CellValue[] => {
      const pair = ordered.pairOf(set);
      const texts = pair
        ? [pair.punch.holder ?? '', toolText(pair.punch, unit), toolText(pair.die, unit)]
        : [];
      return [ordered.marks[mark] ?? '', ...texts, soFar.tools];
    });
    const left = ordered.left.map(({ mark, verdict, finding }): CellValue[] => {
      const why = finding ? sentencesOf([finding], unit).join(' ') : '';
      return [mark, '', verdict, why, ''];
    });
    const run = runSetupWords(runSetup(ordered, found, shop, working));
    const words = toolOrderWords(ordered, found.name, unit);
    const shown = told([...rows, ...left], words, working);
    return run === '' ? shown : [...shown, [run, '', '', '', '']];
  },
});

/** The rows with their heading, and below them what they come to. */
function told(rows: CellValue[][], words: string, working: Working | undefined): CellValue[][] {
  working?.step({
    title: 'Order of tools',
    formula: 'the fewest changes of holder, then of tools',
    values: [],
    result: textValue('order', 'what the order takes', words),
    source,
  });
  return [titles, ...rows, [words, '', '', '', '']];
}

function orderStep(
  title: string,
  { operations, changes, least }: Ordered,
  working: Working | undefined,
): void {
  const count = (symbol: string, meaning: string, value: number) =>
    ({ symbol, meaning, kind: 'count', value }) as const;
  const both = (symbol: string, meaning: string, { holders, tools }: Changes) => [
    count(`${symbol} holders`, `changes of holder, ${meaning}`, holders),
    count(`${symbol} tools`, `changes of tools, ${meaning}`, tools),
  ];
  working?.step({
    title,
    formula: 'changes from each operation to the next',
    values: [
      count('n', 'operations: a mark with one of its tools', operations.length),
      ...both('counted', 'of the order', changes),
      ...both('least', 'that no order of its kind goes below', least),
    ],
    result: count('tools', 'changes of tools', changes.tools),
    source,
  });
}
