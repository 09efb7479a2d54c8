import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../../src/core/shop/readShop.js';
import { readStock } from '../../../../src/core/shop/readStock.js';
import { planJobs } from '../../../../src/core/stock/list/planJobs.js';
import { stockJobs } from '../../../../src/core/stock/list/stockJobs.js';
import { planStock } from '../../../../src/core/stock/planStock.js';
import { stockSheet, stockSheetTitle } from '../../../../src/core/stock/sheet/stockSheet.js';

const shop = readShop({
  presses: [['Item', 'Unit', 'Bay A']],
  settings: [
    ['Setting', 'Value'],
    ['Units', 'mm'],
    ['Saw kerf', 3],
    ['Drops kept from', 400],
  ],
});

/** The values of a sheet's rows, by what the first cell says. */
async function sheetOf(parts: readonly (readonly CellValue[])[], stock: readonly (readonly CellValue[])[]) {
  const list = { name: 'Parts', headings: ['Mark', 'Qty', 'Section', 'Grade', 'Length'], rows: parts };
  const head = ['Section', 'Grade', 'Length', 'Price', 'Available'];
  const jobs = stockJobs([list], shop, readStock([head, ...stock], shop), {});
  const sheet = stockSheet(await planJobs(jobs, shop, (problem) => planStock(problem)));
  const lines = new Map<string, (string | number | undefined)[][]>();
  for (const row of sheet.rows) {
    const values = row.map((cell) => cell?.value);
    const first = String(values[0] ?? '');
    if (row[0]?.kind !== 'heading') lines.set(first, [...(lines.get(first) ?? []), values]);
  }
  return { sheet, lines: (name: string) => lines.get(name) ?? [] };
}

const sum = (values: readonly unknown[]) => values.reduce<number>((total, each) => total + Number(each), 0);

/** Of a flat bar 10 × 100 of a density of 7850 kg/m³ (EN 10058, EN 1991-1-1 table A.4), in kg/mm. */
const kgPerMm = 10 * 100 * 7850e-9;

const lists = fc.array(
  fc.record({ qty: fc.integer({ min: 1, max: 9 }), lengthMm: fc.integer({ min: 60, max: 5900 }) }),
  { minLength: 1, maxLength: 8 },
);

it('what is cut is what the list asks for, and what is bought is parts, drops and scrap', async () => {
  await fc.assert(
    fc.asyncProperty(lists, async (parts) => {
      const rows = parts.map(({ qty, lengthMm }, at) => [`P${at}`, qty, 'FL 10x100', 'S235', lengthMm]);
      const { lines } = await sheetOf(rows, [['FL 10x100', '', 6000, 50, '']]);
      for (const [at, { qty, lengthMm }] of parts.entries()) {
        const cuts = lines('cut').filter((row) => row[7] === `P${at}`);
        expect(sum(cuts.map((row) => Number(row[4]) * Number(row[8])))).toBe(qty);
        expect(cuts.every((row) => row[9] === lengthMm)).toBe(true);
        expect(
          lines('mark')
            .find((row) => row[3] === `P${at}`)
            ?.slice(4, 6),
        ).toEqual([qty, lengthMm]);
      }
      const [total] = lines('buy, total');
      const bars = sum(lines('buy').map((row) => row[4]));
      expect(total?.slice(4, 8)).toEqual([
        bars,
        expect.closeTo(bars * 6000 * kgPerMm, 2),
        undefined,
        50 * bars,
      ]);
      const [result] = lines('result');
      const [net, bought, drops, scrap] = (result ?? []).slice(3, 7).map(Number);
      expect(net).toBeCloseTo(sum(parts.map(({ qty, lengthMm }) => qty * lengthMm)) * kgPerMm, 2);
      expect(bought).toBeCloseTo(bars * 6000 * kgPerMm, 2);
      expect(sum([net, drops, scrap])).toBeCloseTo(bought ?? NaN, 2);
      expect(sum(lines('drop').map((row) => Number(row[3]) * Number(row[4]) * kgPerMm))).toBeCloseTo(
        drops ?? NaN,
        2,
      );
      expect(sum(lines('mark').map((row) => row[8]))).toBeCloseTo(50 * bars, 3);
      // Each bar's cuts follow each other from its front end.
      for (const pattern of new Set(lines('cut').map((row) => row[5]))) {
        const ends = lines('cut').filter((row) => row[5] === pattern);
        const longest = Math.max(
          ...ends.flatMap(
            (row) =>
              String(row[14])
                .match(/[\d.]+/g)
                ?.map(Number) ?? [],
          ),
        );
        expect(longest).toBeLessThanOrEqual(6000 + 3);
      }
    }),
    { numRuns: 60 },
  );
});

it('begins with its title, says what each row is, and has no row that is not named', async () => {
  const { sheet, lines } = await sheetOf(
    [
      ['A', 2, 'FL 10x100', 'S235', 500],
      ['B', 1, 'FL 10x100', 'S235', 7000],
      ['C', 1, 'FL 8x80', 'S235', 500],
      ['D', 1, 'PL 10x100x200', 'S235', ''],
    ],
    [['FL 10x100', '', 6000, '', 1]],
  );
  expect(sheet.rows[0]?.[0]).toEqual({ kind: 'title', value: stockSheetTitle });
  expect(lines('short').map((row) => row.slice(3, 7))).toEqual([
    ['B', 1, 7000, expect.stringMatching(/long/)],
  ]);
  expect(lines('not planned').map((row) => row[3])).toEqual(['C', 'D']);
  // Without a price there is no cost, and it is said.
  const [total] = lines('buy, total');
  expect([total?.[7], total?.[8]]).toEqual([undefined, expect.stringContaining('no total cost')]);
  expect(Math.max(...sheet.rows.map((row) => row.length))).toBeLessThanOrEqual(sheet.widths.length);
});
