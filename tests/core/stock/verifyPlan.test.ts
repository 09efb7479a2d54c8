import { describe, expect, test } from 'vitest';
import { planStock } from '../../../src/core/stock/planStock.js';
import type { PlannedBar, PlannedPiece, StockPlan } from '../../../src/core/stock/stockPlan.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { verifyPlan } from '../../../src/core/stock/verifyPlan.js';

const rad = Math.PI / 6;
const problem: StockProblem = {
  parts: [
    { lengthMm: 500, pieces: 2, leanLeftRad: rad, leanRightRad: 0 },
    { lengthMm: 300, pieces: 3, leanLeftRad: 0, leanRightRad: 0 },
    { lengthMm: 1100, pieces: 1, leanLeftRad: 0, leanRightRad: 0 },
  ],
  stocks: [
    { lengthMm: 1000, price: 10, available: 3 },
    { lengthMm: 800, price: 9, available: 0 },
  ],
  widthMm: 50,
  turning: 'none',
  kerfMm: 3,
  trimMm: 5,
  gripMm: 40,
  keepMm: 100,
};
const plan = planStock(problem);

function withBar(
  change: Partial<PlannedBar> | ((bar: PlannedBar) => Partial<PlannedBar>),
  at = 0,
): StockPlan {
  const bars = plan.bars.map((bar, k) =>
    k === at ? { ...bar, ...(typeof change === 'function' ? change(bar) : change) } : bar,
  );
  return { ...plan, bars };
}

function withPiece(change: (piece: PlannedPiece) => Partial<PlannedPiece>, at = 0, bar = 0): StockPlan {
  return withBar(
    ({ pieces }) => ({
      pieces: pieces.map((piece, k) => (k === at ? { ...piece, ...change(piece) } : piece)),
    }),
    bar,
  );
}

const moved = (mm: number) => (piece: PlannedPiece) => ({
  startMm: piece.startMm + mm,
  endMm: piece.endMm + mm,
});
const last = (plan.bars[0]?.pieces.length ?? 0) - 1;
const tooLong = { part: 2, pieces: 1, why: 'too long' } as const;

const broken: Record<string, [plan: StockPlan, says: RegExp]> = {
  'a piece missing': [withBar(({ pieces }) => ({ pieces: pieces.slice(0, -1) })), /rest is|pieces/],
  'a part forgotten': [{ ...plan, shortages: [] }, /part 2: 0 of 1 pieces/],
  'a piece too many': [
    { ...plan, shortages: [tooLong, { part: 1, pieces: 1, why: 'not enough bars' }] },
    /part 1: 4 of 3/,
  ],
  'a shortage below nothing': [
    {
      ...plan,
      shortages: [
        tooLong,
        { part: 1, pieces: 1, why: 'not enough bars' },
        { part: 1, pieces: -1, why: 'not enough bars' },
      ],
    },
    /-1 pieces are short/,
  ],
  'a bar cut once more': [withBar(({ bars }) => ({ bars: bars + 1 })), /pieces/],
  'half a bar': [withBar(({ bars }) => ({ bars: bars - 0.5 })), /a bar without pieces/],
  'a bar of nothing': [
    { ...plan, bars: [...plan.bars, { ...(plan.bars[0] as PlannedBar), pieces: [] }] },
    /without pieces/,
  ],
  'pieces that overlap': [withPiece(moved(-1), 1), /starts before/],
  'a cut of less than the kerf': [withPiece(moved(-0.001), last), /starts before/],
  'a piece within the trim': [withPiece(moved(-0.001)), /starts before/],
  'a piece held by the grip': [withPiece(moved(400), last), /the last piece ends at/],
  'a piece cut too short': [withPiece(({ endMm }) => ({ endMm: endMm - 0.001 })), /mm long/],
  'a stock that is not to be had': [withBar({ stock: 1 }), /the last piece|stock 1 is used|the rest is/],
  'more bars than can be had': [
    { ...plan, bars: plan.bars.map((bar) => ({ ...bar, bars: bar.bars + 3 })) },
    /pieces|is used/,
  ],
  'a wrong rest': [withBar(({ restMm }) => ({ restMm: restMm + 0.001 })), /the rest is/],
  'a rest kept and not': [withBar(({ isKept }) => ({ isKept: !isKept })), /kept or not/],
  'a wrong purchase': [{ ...plan, purchase: plan.purchase + 0.01 }, /the purchase is/],
  'no purchase': [{ ...plan, purchase: NaN }, /the purchase is/],
  'a bound above the purchase': [
    { ...plan, bound: plan.purchase + 0.01, proof: undefined },
    /above the purchase/,
  ],
  'no bound': [{ ...plan, bound: NaN }, /above the purchase/],
  'a proof without its bound': [
    { ...plan, bound: plan.purchase - 0.01, proof: 'by bound' },
    /proves nothing/,
  ],
  'a piece turned over': [withPiece(() => ({ isTurnedOver: true })), /is turned/],
  'a piece turned round': [withPiece(() => ({ isTurnedRound: true })), /is turned/],
  'a face that leans otherwise': [withPiece(() => ({ leanLeftRad: -rad })), /leans otherwise|starts before/],
  'an unknown part': [withPiece(() => ({ part: 7 })), /leans otherwise|mm long/],
  'an unknown stock': [withBar({ stock: 7 }), /the last piece ends/],
  'an unknown part that is short': [
    { ...plan, shortages: [...plan.shortages, { part: 7, pieces: 1, why: 'not enough bars' }] },
    /part 7/,
  ],
  'a part called too long that fits': [
    { ...plan, shortages: [tooLong, { part: 1, pieces: 1, why: 'too long' }] },
    /part 1 fits a bar/,
  ],
};

describe('A plan is refused with', () => {
  for (const [name, [wrong, says]] of Object.entries(broken))
    test(name, () => {
      expect(() => {
        verifyPlan(problem, wrong);
      }).toThrow(says);
    });

  test('more bars of a stock than can be had, where all else is right', () => {
    expect(() => {
      verifyPlan({ ...problem, stocks: problem.stocks.map((stock) => ({ ...stock, available: 1 })) }, plan);
    }).toThrow(/stock 0 is used/);
  });

  test('a proof, where pieces find no bar', () => {
    const few = { ...problem, stocks: problem.stocks.map((stock) => ({ ...stock, available: 1 })) };
    const short = planStock(few);
    expect(short.shortages.some(({ why }) => why === 'not enough bars')).toBe(true);
    expect(() => {
      verifyPlan(few, { ...short, bound: short.purchase, proof: 'by bound' });
    }).toThrow(/pieces are short/);
  });
});

test('the plan itself passes', () => {
  expect(() => {
    verifyPlan(problem, plan);
  }).not.toThrow();
});
