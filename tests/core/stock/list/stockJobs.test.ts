import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../../src/core/shop/readShop.js';
import { readStock } from '../../../../src/core/shop/readStock.js';
import { planJobs } from '../../../../src/core/stock/list/planJobs.js';
import { stockJobs } from '../../../../src/core/stock/list/stockJobs.js';
import type { StockJobOptions } from '../../../../src/core/stock/list/stockJob.js';
import { planStock } from '../../../../src/core/stock/planStock.js';

type Rows = readonly (readonly CellValue[])[];

const shopOf = (unit: 'in' | 'mm', ...settings: [string, CellValue][]) =>
  readShop({
    presses: [['Item', 'Unit', 'Bay A']],
    settings: [['Setting', 'Value'], ['Units', unit], ...settings],
  });
const inShop = shopOf('in');
const headings = [
  'Mark',
  'Qty',
  'Section',
  'Grade',
  'Length',
  'Miter left',
  'Miter right',
  'Long side',
  'Miter leg',
];
const stockHead = ['Section', 'Grade', 'Length', 'Price', 'Available'];

const jobsOf = (rows: Rows, stock: Rows = [], options: StockJobOptions = {}, shop = inShop) =>
  stockJobs([{ name: 'Parts', headings, rows }], shop, readStock([stockHead, ...stock], shop), options);

describe('The jobs of a list', () => {
  it('are one for sections and grades that are spelled differently', () => {
    const { jobs } = jobsOf([
      ['A', 1, 'L3X3X1/4', 'A36', 10],
      ['B', 2, 'L 3 x 3 x .25', 'ASTM A36', 20],
      ['C', 3, 'L3x3x1/4', 'A572-50', 30],
    ]);
    expect(jobs.map(({ parts }) => parts.map(({ mark }) => mark))).toEqual([['B', 'A'], ['C']]);
  });

  it('take stock of any spelling, of their grade or of any', () => {
    const stock = [
      ['FB 4 x 1/4', '', "20'-0", 60, ''],
      ['FB 1/4x4', 'A572-50', "24'-0", 70, ''],
    ];
    const [job] = jobsOf([['A', 1, 'FB 1/4x4', 'A36', 10]], stock).jobs;
    expect(job?.stocks).toEqual([{ lengthMm: 6096, price: 60, row: 1 }]);
  });

  it('plan hidden rows and name them, or leave them out', () => {
    const rows = [
      ['A', 1, 'FB 1/4x4', 'A36', 10],
      ['B', 2, 'FB 1/4x4', 'A36', 20],
    ];
    const list = { name: 'Parts', headings, rows, headingRow: 4, hidden: new Set([6]) };
    const none = readStock([stockHead], inShop);
    const planned = stockJobs([list], inShop, none);
    expect(planned.hidden).toEqual([{ list: 'Parts', row: 6 }]);
    expect(planned.jobs[0]?.parts.map(({ mark }) => mark)).toEqual(['B', 'A']);
    const without = stockJobs([list], inShop, none, { withoutHidden: true });
    expect(without.hidden).toEqual([]);
    expect(without.jobs[0]?.parts.map(({ mark }) => mark)).toEqual(['A']);
    expect(without.left).toMatchObject([{ mark: 'B', why: { is: 'asked', kind: 'hidden' } }]);
  });

  it('name rows that are no parts, hidden or not, by their rows on the sheet', () => {
    const rows = [
      ['CATWALK LEVEL 2'],
      ['A', 1, 'FB 1/4x4', 'A36', 10],
      [],
      ['Subtotal', 1],
      ['B', 2, 'FB 1/4x4', 'A36', 20],
    ];
    const list = { name: 'Parts', headings, rows, headingRow: 4, hidden: new Set([8]) };
    const found = stockJobs([list], inShop, readStock([stockHead], inShop), { withoutHidden: true });
    expect(found.others).toEqual([
      { list: 'Parts', row: 5, is: 'title' },
      { list: 'Parts', row: 8, is: 'total' },
    ]);
    expect(found.lists).toEqual(['Parts']);
    expect(found.left).toEqual([]);
    expect(found.jobs[0]?.parts).toHaveLength(2);
  });

  it('do not take the order of rows into account', () => {
    const rows: CellValue[][] = [
      ['A', 3, 'FB 1/4x4', 'A36', 30],
      ['B', 2, 'FB 1/4x4', 'A36', 30],
      ['C', 4, 'FB 1/4x4', 'A36', 50],
      ['D', 5, 'L3X3X1/4', 'A36', 20],
    ];
    const seen = (list: Rows) =>
      jobsOf(list).jobs.map(({ key, parts }) => [key, parts.map(({ mark, pieces }) => [mark, pieces])]);
    fc.assert(
      fc.property(fc.shuffledSubarray(rows, { minLength: rows.length }), (list) => {
        expect(seen(list)).toEqual(seen(rows));
      }),
    );
  });

  it('lean by hand: heel at the fence, above 0 where the far edge lies farther along', () => {
    const part = (...cells: CellValue[]) => {
      const [first] = jobsOf([['A', 1, 'L3X3X1/4', 'A36', 30, ...cells]]).jobs[0]?.parts ?? [];
      return [first?.leanLeftRad, first?.leanRightRad].map((rad) =>
        Math.round(((rad ?? NaN) * 180) / Math.PI),
      );
    };
    expect(part(45, 45, 'heel')).toEqual([45, -45]);
    expect(part(45, 45, 'toe')).toEqual([-45, 45]);
    expect(part(45, 30, 'left heel, right toe')).toEqual([45, 30]);
  });

  it('plan a miter whose long side is blank as a square end, and say so', () => {
    const [job] = jobsOf([['A', 1, 'L3X3X1/4', 'A36', 30, 45, 45]]).jobs;
    expect(job?.parts).toMatchObject([{ notNested: 'Long side', leanLeftRad: 0, leanRightRad: 0 }]);
  });

  it('part right-hand from left-hand pieces of an angle', () => {
    const [job] = jobsOf([['A', '2R 3L', 'L3X3X1/4', 'A36', 30, 45, '', 'left heel']]).jobs;
    const leans = job?.parts.map((part) => [
      part.pieces,
      Math.sign(part.leanLeftRad),
      Math.sign(part.leanRightRad),
    ]);
    expect(leans).toEqual(
      expect.arrayContaining([
        [2, 1, 0],
        [3, 0, -1],
      ]),
    );
  });

  it('leave plates, rows without a length and unreadable rows out by name, and pass over subtotals', () => {
    const { left, jobs } = jobsOf([
      ['P', 1, 'PL1/4X4', 'A36', 10],
      ['N', 1, 'FB 1/4x4', 'A36', ''],
      ['Q', 'some', 'FB 1/4x4', 'A36', 10],
      ['S', 1, 'FB one', 'A36', 10],
      ['Subtotal', 4, '', '', ''],
    ]);
    expect(jobs).toEqual([]);
    expect(left.map(({ mark, why }) => [mark, why.is])).toEqual([
      ['P', 'plate'],
      ['N', 'no length'],
      ['Q', 'not read'],
      ['S', 'not read'],
    ]);
    for (const { why } of left) if (why.is === 'not read') expect(why.sentence).not.toBe('');
  });

  it('take a plate that is cut from bar to width', () => {
    const shop = shopOf('in', ['Bar stock to width', 'from bar']);
    const rows = [
      ['P', 1, 'PL1/4X4', 'A36', 10],
      ['F', 1, 'FB 1/4x4', 'A36', 10],
    ];
    const { jobs } = jobsOf(rows, [], {}, shop);
    expect(jobs.map(({ section, parts }) => [section.designation, parts.length])).toEqual([['FB1/4X4', 2]]);
  });

  it('leave out Off press rows where that is asked', () => {
    const rows = [['C', 1, 'C8X11.5', 'A36', 100]];
    expect(jobsOf(rows).jobs).toHaveLength(1);
    expect(jobsOf(rows, [], { withoutOffPress: true }).left).toMatchObject([{ why: { is: 'asked' } }]);
  });

  it('use common lengths only when asked', () => {
    const rows = [['A', 1, 'FB 1/4x4', 'A36', 10]];
    expect(jobsOf(rows).jobs[0]?.stocks).toEqual([]);
    const [job] = jobsOf(rows, [], { commonLengths: true }).jobs;
    expect([job?.origin, job?.stocks]).toEqual(['common lengths', [{ lengthMm: 6096 }, { lengthMm: 12192 }]]);
  });

  it('are not planned while a row of their stock cannot be read', async () => {
    const stock = [
      ['FB 1/4x4', '', "20'-0", 60, ''],
      ['FB 1/4x4', '', 'long', 60, ''],
    ];
    const plan = await planJobs(jobsOf([['A', 1, 'FB 1/4x4', 'A36', 10]], stock), inShop, (each) =>
      planStock(each),
    );
    expect(plan.unplanned).toMatchObject([{ why: 'unreadable stock' }]);
    expect(plan.unplanned[0]?.job.unreadable[0]).toContain('Stock row 2, Length');
  });
});

describe('The plan of a list', () => {
  const rowOf = fc.tuple(
    fc.constantFrom('FB 1/4x4', 'L3X3X1/4'),
    fc.integer({ min: 1, max: 12 }),
    fc.integer({ min: 5, max: 250 }),
  );
  const settings: [string, CellValue][] = [
    ['Cut kerf', '1/8'],
    ['End trim', '1/2'],
    ['Shortest drop kept', 24],
  ];
  const stock = [
    ['FB 1/4x4', '', "20'-0", 60, ''],
    ['L3X3X1/4', '', "20'-0", 85, 4],
  ];

  it('cuts every piece once or names it short, adds up its masses, and runs forward along each bar', async () => {
    const shop = shopOf('in', ...settings);
    await fc.assert(
      fc.asyncProperty(fc.array(rowOf, { minLength: 1, maxLength: 6 }), async (list) => {
        const rows = list.map(([section, qty, length], at) => [`M${at}`, qty, section, 'A36', length]);
        const { planned } = await planJobs(jobsOf(rows, stock, {}, shop), shop, (each) => planStock(each));
        const count = new Map<string, number>();
        const add = (mark: string, pieces: number) => count.set(mark, (count.get(mark) ?? 0) + pieces);
        for (const { bars, shortages, mass, purchases, shares, cost } of planned) {
          for (const bar of bars) {
            for (const { part } of bar.pieces) add(part.mark, bar.bars);
            const runs = bar.pieces.map(({ runMm }) => runMm);
            expect(runs).toEqual([...runs].sort((a, b) => a - b));
            expect(runs.at(-1)).toBeLessThanOrEqual(bar.stock.lengthMm);
          }
          for (const { part, pieces } of shortages) add(part.mark, pieces);
          expect(mass.netKg + mass.dropsKg + mass.scrapKg).toBeCloseTo(mass.boughtKg, 6);
          expect(purchases.reduce((sum, { massKg }) => sum + massKg, 0)).toBeCloseTo(mass.boughtKg, 6);
          if (shares.length > 0)
            expect(shares.reduce((sum, each) => sum + (each.cost ?? 0), 0)).toBeCloseTo(cost ?? NaN, 6);
        }
        expect([...count].sort()).toEqual(rows.map(([mark, qty]) => [mark, qty]).sort());
      }),
      { numRuns: 40 },
    );
  });

  it('is the same in inches and in mm', async () => {
    const plans = await Promise.all(
      (['in', 'mm'] as const).map(async (unit) => {
        const shop = shopOf(unit, ['Cut kerf', '1/8 in']);
        const rows = [
          ['A', 4, 'L3X3X1/4 in', 'A36', '30 in'],
          ['B', 3, 'L3X3X1/4 in', 'A36', '50 in'],
        ];
        const lengths = [['L3X3X1/4 in', '', '240 in', 85, '']];
        const { planned } = await planJobs(jobsOf(rows, lengths, {}, shop), shop, (each) => planStock(each));
        return planned.map(({ bars, cost }) => [
          cost,
          bars.map(({ pieces }) => pieces.map(({ runMm }) => runMm.toFixed(6))),
        ]);
      }),
    );
    expect(plans[0]).toEqual(plans[1]);
    expect(plans[0]?.[0]?.[0]).toBe(85 * 2);
  });
});
