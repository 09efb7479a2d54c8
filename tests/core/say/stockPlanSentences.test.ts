import { describe, expect, it } from 'vitest';
import { moneyWords, proofSentences, soFarWords } from '../../../src/core/say/stockPlanSentences.js';
import type { StockPlan } from '../../../src/core/stock/stockPlan.js';

const bar = { stock: 0, bars: 31, pieces: [], restMm: 0, isKept: false };
const plan: StockPlan = {
  bars: [bar],
  shortages: [],
  purchase: 31 * 6000,
  bound: 29.2 * 6000,
  proof: undefined,
  by: 'solver',
  isStopped: false,
};
const one = { stocks: [{ lengthMm: 6000 }] };
const priced = {
  stocks: [
    { lengthMm: 6000, price: 30 },
    { lengthMm: 12000, price: 58 },
  ],
};

describe('what is said of a plan', () => {
  it('counts bars where all have one length', () => {
    expect(soFarWords(plan, one, '', 'mm')).toBe('31 bars so far; no plan needs fewer than 30');
  });

  it('tells money where every length has a price, length where not', () => {
    const paid = { ...plan, purchase: 930, bound: 900 };
    expect(soFarWords(paid, priced, 'USD', 'mm')).toBe(
      '31 bars, 930.00 USD so far; no plan costs less than 900.00 USD',
    );
    const some = { stocks: [{ lengthMm: 6000, price: 30 }, { lengthMm: 12000 }] };
    expect(soFarWords(plan, some, 'USD', 'mm')).toBe(
      '31 bars, 186000 mm so far; no plan buys less than 175200 mm',
    );
  });

  it('says that it is proven only with a proof, and never a smaller gap than there is', () => {
    expect(proofSentences({ ...plan, proof: 'by bound' }, one, '', 'mm')).toEqual([
      'Proven: no plan buys less.',
    ]);
    expect(proofSentences({ ...plan, proof: 'by patterns' }, priced, '', 'mm')[0]).toBe(
      'Proven: no plan costs less. Every way to cut a bar that could do better was tried.',
    );
    expect(proofSentences({ ...plan, isStopped: true }, one, '', 'mm')).toEqual([
      'Not proven: no plan needs fewer than 30; this is at most 6.2% above it.',
      'It was stopped: this is the best plan so far.',
    ]);
    expect(proofSentences({ ...plan, by: 'steps only' }, one, '', 'mm')[1]).toContain(
      'The solver did not load',
    );
  });

  it('writes money with two places', () => {
    expect(moneyWords(1234.5, '$')).toBe('1,234.50 $');
  });
});
