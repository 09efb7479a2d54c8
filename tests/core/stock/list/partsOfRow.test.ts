import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../../src/core/shop/readShop.js';
import { readStock } from '../../../../src/core/shop/readStock.js';
import { planJobs } from '../../../../src/core/stock/list/planJobs.js';
import { stockJobs } from '../../../../src/core/stock/list/stockJobs.js';
import { planStock } from '../../../../src/core/stock/planStock.js';
import { stockSheet } from '../../../../src/core/stock/sheet/stockSheet.js';

const shop = readShop({
  presses: [
    ['Item', 'Unit', 'Bay A'],
    ['Angle shear slug', 'mm', 6],
  ],
  settings: [
    ['Setting', 'Value'],
    ['Units', 'mm'],
    ['End trim', 10],
    ['Grip', 60],
  ],
});
const headings = ['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Miter left', 'Miter right', 'Long side'];
const stock = readStock(
  [
    ['Section', 'Length'],
    ['L80X80X8', 6000],
    ['C8X11.5', 6000],
  ],
  shop,
);

async function sheetOf(...row: CellValue[]): Promise<(string | number | undefined)[][]> {
  const jobs = stockJobs([{ name: 'Parts', headings, rows: [row] }], shop, stock);
  const { rows } = stockSheet(await planJobs(jobs, shop, (problem) => planStock(problem)));
  return rows.map((cells) => cells.map((cell) => cell?.value));
}
const cutsOf = (rows: (string | number | undefined)[][]) =>
  rows
    .filter(([line]) => line === 'cut')
    .map((cells) => [cells[8], cells[10], cells[11], cells[14], cells[15]]);

/*
 * By hand: trim 10; a cut of 6 mm at 45° takes 8.49 along the bar. Two of the other hand, square left and 45° right, run to
 * 10 + 1008.49 and 1018.49 + 1008.49; those as drawn have their square ends behind.
 */
describe('Both hands of a mitered angle in a cut list', () => {
  it('have their miters on the ends where they are cut, with the edge of the long point', async () => {
    const [other, drawn] = cutsOf(await sheetOf('A1', '2R 2L', 'L80X80X8', 'A36', 1000, 45, '', 'left heel'));
    expect(other?.slice(0, 4)).toEqual([2, undefined, 45, '1018.49, 2026.97']);
    expect(other?.[4]).toBe('long point right at the fence; other hand than drawn');
    expect(drawn?.slice(0, 3)).toEqual([2, 45, undefined]);
    expect(drawn?.[4]).toBe('long point left at the fence');
  });

  it('are told apart where their miters are not nested', async () => {
    const cuts = cutsOf(await sheetOf('C1', '2R 1L', 'C8X11.5', 'A36', 1200, 30, ''));
    expect(cuts.map((cells) => cells.slice(0, 3))).toEqual([
      [2, 30, undefined],
      [1, undefined, 30],
    ]);
    expect(cuts[1]?.[4]).toContain('other hand than drawn');
  });

  it('say what a cut takes where that is not known, beside what is proven', async () => {
    const rows = await sheetOf('C1', 2, 'C8X11.5', 'A36', 2960);
    const words = rows.flatMap((cells) => cells.map(String));
    expect(words).toContain(
      'Proven: no plan buys less. It is sawn, and what the saw takes is not known, so 0 mm is used. Fill in Cut kerf.',
    );
    expect(words.join('\n')).toContain('Proven: no plan buys less. What a cut takes is not known: C8X11.5.');
    expect(words).toContain('Grip: nothing is cut from the last 60 mm of a bar.');
  });
});
