// The time and the cost of three rows of the example, every share of them worked out by hand in examples/quote/times.tsv.
import { beforeAll, describe, expect, it } from 'vitest';
import { verdictKind, type Verdict } from '../../src/core/check/verdict.js';
import { readHeadings } from '../../src/core/row/headings/readHeadings.js';
import { checkedPart } from '../../src/core/row/checkRow.js';
import { readShop } from '../../src/core/shop/readShop.js';
import { workOnChecked } from '../../src/core/work/workOnRow.js';
import { type Quote, recalculatedQuote, shown, source } from './quote.js';

const byHand = source('times').map((row) => ({
  mark: row.Mark ?? '',
  of: row.Share ?? '',
  count: Number(row.Count),
  secondsEach: Number(row['Seconds each']),
}));
const expected = source('expected').filter(({ Minutes }) => Minutes !== '');
const marks = expected.map(({ Mark = '' }) => Mark);

const table = (name: string) => {
  const rows = source(name);
  return [Object.keys(rows[0] ?? {}), ...rows.map((row) => Object.values(row))];
};

function sharesOf(mark: string) {
  const [headings = [], ...rows] = table('parts');
  const cells = rows.find(([each]) => each === mark) ?? [];
  const [presses = [], tools, grades, settings] = ['presses', 'tools', 'grades', 'settings'].map(table);
  const shop = readShop({ presses, tools, grades, settings });
  const work = workOnChecked(checkedPart(cells, readHeadings(headings), shop), shop);
  return work.is === 'timed' ? work.time.shares : [];
}

describe('the time of a row', () => {
  let quote: Quote;
  beforeAll(async () => {
    quote = await recalculatedQuote();
  });

  it('is worked out by hand for a base plate, a clip and a mitered angle', () => {
    expect(marks).toEqual(['BP1', 'CL1', 'AF1']);
    expect([...new Set(byHand.map(({ mark }) => mark))]).toEqual(marks);
  });

  it.each(marks)('of %s has the shares that were worked out by hand, and no other', (mark) => {
    const counted = sharesOf(mark).map(({ of, count, secondsEach }) => ({ mark, of, count, secondsEach }));
    const sorted = (rows: typeof byHand) => [...rows].sort((a, b) => a.of.localeCompare(b.of));
    expect(sorted(counted)).toEqual(sorted(byHand.filter((each) => each.mark === mark)));
  });

  it.each(expected)('of $Mark is $Minutes minutes and costs $Cost on the sheet', ({ Mark = '', ...row }) => {
    const shares = byHand.filter(({ mark }) => mark === Mark);
    const seconds = shares.reduce((sum, { count, secondsEach }) => sum + count * secondsEach, 0);
    const { Minutes, Cost } = quote.rows.get(Mark) ?? {};
    expect(seconds / 60).toBeCloseTo(Number(row.Minutes), 3);
    expect(Minutes).toBeCloseTo(seconds / 60, 9);
    // Steel: 490 lb/ft³ by hand, 7850 kg/m³ in the calculation.
    expect(Math.abs(Number(Cost) / Number(row.Cost) - 1)).toBeLessThan(0.001);
  });

  it('stands in every row that a press makes, with its cost, and in no other', () => {
    const notMade = ['', 'Off press', 'Check input'];
    const wrong = [...quote.rows].filter(([, { Verdict, Minutes, Cost }]) => {
      const word = shown(Verdict);
      const made = !notMade.includes(word) && verdictKind(word as Verdict) !== 'fails';
      return made !== (typeof Minutes === 'number') || made !== (typeof Cost === 'number');
    });
    expect(wrong.map(([mark, { Verdict }]) => `${mark}: ${shown(Verdict)}`)).toEqual([]);
  });
});
