import { JSDOM } from 'jsdom';
import { expect, it } from 'vitest';
import { readShop } from '../../../src/core/shop/readShop.js';
import { readStock } from '../../../src/core/shop/readStock.js';
import { planJobs } from '../../../src/core/stock/list/planJobs.js';
import { stockJobs } from '../../../src/core/stock/list/stockJobs.js';
import { stockSheet } from '../../../src/core/stock/sheet/stockSheet.js';
import { planStock } from '../../../src/core/stock/planStock.js';
import { planPage } from '../../../src/print/stock/planPage.js';

const shop = readShop({
  presses: [['Item', 'Unit', 'Bay A']],
  settings: [
    ['Setting', 'Value'],
    ['Units', 'in'],
  ],
});
const headings = ['Mark', 'Qty', 'Section', 'Grade', 'Length'];
const stock = readStock(
  [
    ['Section', 'Length'],
    ['FB 1/4x4', "20'-0"],
  ],
  shop,
);

async function planned(...rows: (string | number)[][]) {
  const list = { name: 'Parts', headings, rows, headingRow: 1, hidden: new Set([2]) };
  return planJobs(stockJobs([list], shop, stock), shop, (problem) => planStock(problem));
}

it('names on paper and on the sheet what is not planned, and hidden rows that are', async () => {
  const plan = await planned(
    ['A', 1, 'FB 1/4x4', 'A36', 60],
    ['Subtotal', 1],
    ['B', 1, 'FB 1/4x4', 'A36'],
    ['C', 1, 'L3X3X1/4', 'A36', 60],
  );
  const page = new JSDOM(planPage(plan, { name: 'tower.xlsx', date: 'November 29, 2026' })).window.document;
  const notes = [...page.querySelectorAll('section')].find(
    (section) => section.querySelector('h2')?.textContent === 'Notes on rows',
  );
  const said = [...(notes?.querySelectorAll('p') ?? [])].map(({ textContent }) => textContent ?? '');
  expect(said[0]).toMatch(/^Not planned: L3X3X1\/4, A36\. The Stock table has no length for it\./);
  expect(said[1]).toMatch(/^Not planned: B\. /);
  expect(said.slice(2)).toEqual([
    '1 hidden row is planned too: 2.',
    'Row 3 is taken as a total: not planned.',
  ]);
  const cells = stockSheet(plan).rows.flatMap((row) => row.map((cell) => cell?.value));
  for (const words of said.slice(2)) expect(cells).toContain(words);
});

it('says nothing of rows where all are planned', async () => {
  const list = { name: 'Parts', headings, rows: [['A', 1, 'FB 1/4x4', 'A36', 60]] };
  const plan = await planJobs(stockJobs([list], shop, stock), shop, (problem) => planStock(problem));
  expect(planPage(plan, { name: '', date: '' })).not.toContain('Notes on rows');
});
