// The stock plan of the example against totals counted by hand.
import { beforeAll, describe, expect, it } from 'vitest';
import { exampleBook } from '../support/exampleCards.js';
import { stockOfBook } from '../../src/print/stock/stockOfBook.js';

/*
 * Bars of each section by hand, kerf and trim 0, lengths in inches; 20 ft = 240, 24 ft = 288, 40 ft = 480:
 * C8X11.5: 4 × 170 + 4 × 142.5 = 1250; three of 480 at 390 are 1170, and 2 × 390 + 200 is 1200 long, too short.
 * FB 1/4x4: 4 × 288 need 24 ft each, 10 × 219 a bar each: 4 × 75 + 10 × 60.   FB 3/8x2-1/2: 4 × 120 = 2 × 240.
 * FB 3/8x4: 10 pairs of 14.   FB 1/2x3: 48.   FB 1/2x4: 72.   L2X2: 156.   L2-1/2: 180.   L3X3X3/8: 168.   L4X4X1/2: 56.
 * L4X4X3/8: 192.   L3X3X1/4: 384 + 244 + 288 + 36 + 36 + 96 = 1084; 2 × 480 + 240 at 415; what costs less is 960 long.
 * RB 3/4 and RB 7/8: 13 of 18 a bar, so two each.   RB 1: 3 of 74-1/4 a bar, so three.   SQ 3/4: 6 of 36 or 40 a bar, so 20.
 */
const byHand: Record<string, [bars: number, cost: number]> = {
  'C8X11.5': [3, 1170],
  'FB1/4X4': [14, 900],
  'FB3/8X2-1/2': [2, 110],
  'FB3/8X4': [1, 88],
  'FB1/2X3': [1, 88],
  'FB1/2X4': [1, 116],
  L2X2X1_4: [1, 55],
  'L2-1/2X2-1/2X1/4': [1, 70],
  'L3X3X1/4': [3, 415],
  'L3X3X3/8': [1, 122],
  'L4X4X1/2': [1, 217],
  'L4X4X3/8': [1, 165],
  'RB3/4': [2, 52],
  'RB7/8': [2, 70],
  RB1: [3, 135],
  'SQ3/4': [20, 660],
};

interface Section {
  section: string;
  cost: number;
  buy: { bars: number }[];
}

describe('the stock plan of the example', () => {
  let sections: Section[];
  let rows: readonly (readonly ({ value: string | number } | null)[])[];
  beforeAll(async () => {
    const made = await stockOfBook(exampleBook());
    if ('problem' in made) throw new Error(made.problem);
    sections = made.json.sections as Section[];
    rows = made.sheet.rows;
  });

  it('buys for each section what was counted by hand', () => {
    const bought = sections.map(({ section, cost, buy }) => [
      section,
      [buy.reduce((sum, { bars }) => sum + bars, 0), cost],
    ]);
    const expected = Object.entries(byHand).map(([section, counted]) => [section.replace('_', '/'), counted]);
    expect(bought.sort()).toEqual(expected.sort());
  });

  it('buys 57 bars for 4433', () => {
    const total = rows.find(([first]) => first?.value === 'buy, total');
    expect([total?.[4]?.value, total?.[7]?.value]).toEqual([57, 4433]);
  });

  it('gives each mark its share of the cost, which add up to all of it', () => {
    const costs = rows.filter(([first]) => first?.value === 'mark').map((row) => Number(row[8]?.value));
    expect(costs.reduce((sum, each) => sum + each, 0)).toBeCloseTo(4433, 2);
  });
});
