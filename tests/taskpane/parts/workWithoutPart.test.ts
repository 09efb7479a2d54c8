// A row that says work and has no part is told everywhere, and counted as a part nowhere.
import { expect, it } from 'vitest';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { otherRowSentences } from '../../../src/core/say/otherRows.js';
import { readStock } from '../../../src/core/shop/readStock.js';
import { stockJobs } from '../../../src/core/stock/list/stockJobs.js';
import { listToolOrder } from '../../../src/core/work/listToolOrder.js';
import { failGroups } from '../../../src/taskpane/parts/list/failGroups.js';
import { stripOf } from '../../../src/taskpane/parts/list/rowStrip.js';
import { shopWith } from '../../support/sampleShop.js';

const names = ['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Press'];
const rows = [
  ['F1', 2, 'FB3/8X6', 'A36', 12, 'Bay A'],
  ['w/ cope both ends', null, null, null, null, null],
  [null, 2, 'slots 13/16 x 1-3/4', null, null, null],
  ['PUNCHED PLATES', null, null, null, null, null],
];
const shop = shopWith();
const headings = readHeadings(names);

it('the pane shows its word, its group and its place in the strip', () => {
  const results = rows.map((cells) => checkRow(cells, headings, shop));
  expect(stripOf(results).map(({ verdict }) => verdict)).toEqual(['OK', 'No part', 'No part']);
  const groups = failGroups(results, 'in');
  expect(groups.map(({ verdict, rows: own }) => [verdict, own])).toEqual([
    ['No part', [1]],
    ['No part', [2]],
  ]);
  expect(groups[0]?.reason).toContain("'w/ cope both ends' says work");
});

it('a stock plan and the order of tools name it, and take no piece from it', () => {
  const { jobs, left, others } = stockJobs(
    [{ name: 'Parts', headings: names, rows }],
    shop,
    readStock(undefined, shop),
  );
  expect(jobs.flatMap(({ parts }) => parts.map(({ mark, pieces }) => [mark, pieces]))).toEqual([['F1', 2]]);
  expect(left).toEqual([]);
  expect(others.map(({ row, is }) => [row, is])).toEqual([
    [2, 'work'],
    [3, 'work'],
    [4, 'title'],
  ]);
  expect(otherRowSentences(others, 'not planned')).toContain(
    'Rows 2–3 say work and have no part: not planned.',
  );
  const [press] = shop.presses;
  if (!press) throw new Error('the shop has no press');
  expect(listToolOrder([names, ...rows], press, shop)).toMatchObject({ noParts: 3, left: [], notPunched: 1 });
});
