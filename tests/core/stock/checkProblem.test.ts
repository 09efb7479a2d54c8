import { expect, test } from 'vitest';
import { requireStockProblem } from '../../../src/core/stock/checkProblem.js';
import type { StockProblem } from '../../../src/core/stock/stockProblem.js';
import { squareProblem } from './support.js';

const good: StockProblem = {
  ...squareProblem({ 500: 2 }, [
    { lengthMm: 6000, price: 20, available: 3 },
    { lengthMm: 9000, price: 0 },
  ]),
  widthMm: 50,
};
const part = { lengthMm: 500, pieces: 1, leanLeftRad: 0, leanRightRad: 0 };
const [stock = { lengthMm: 6000 }] = good.stocks;
const rad = (degrees: number) => (degrees * Math.PI) / 180;
const withPart = (change: Partial<typeof part>): StockProblem => ({
  ...good,
  parts: [{ ...part, ...change }],
});
const withStock = (change: Partial<typeof stock>): StockProblem => ({
  ...good,
  stocks: [{ ...stock, ...change }],
});

const refused: [problem: StockProblem, sentence: string][] = [
  [{ ...good, parts: [] }, 'Parts: none are given. Give at least one part to cut.'],
  [{ ...good, stocks: [] }, 'Stock lengths: none are given. Give at least one length that bars come in.'],
  [withPart({ lengthMm: 0 }), 'Length: 0 mm is not possible. Give a length above 0, and at most 10,000 m.'],
  [
    withPart({ lengthMm: NaN }),
    'Length: NaN mm is not possible. Give a length above 0, and at most 10,000 m.',
  ],
  [
    withPart({ lengthMm: 10_000_001 }),
    'Length: 10000001 mm is not possible. Give a length above 0, and at most 10,000 m.',
  ],
  [withPart({ pieces: 0 }), 'Pieces: 0 is not a count. Give a whole number from 1 up.'],
  [withPart({ pieces: 1.5 }), 'Pieces: 1.5 is not a count. Give a whole number from 1 up.'],
  [
    withPart({ pieces: 100_001 }),
    'Pieces: 100001 are too many for one plan. Plan at most 100000 pieces at once.',
  ],
  [withPart({ leanLeftRad: rad(86) }), 'Miter: 86° from square is too steep. Give at most 85°.'],
  [withPart({ leanRightRad: NaN }), 'Miter: NaN° from square is too steep. Give at most 85°.'],
  [
    { ...withPart({ leanLeftRad: rad(45) }), widthMm: 0 },
    'Width: it is 0, and parts are mitered. Give the width of the bar in the plane of the miters.',
  ],
  [
    withPart({ lengthMm: 90, leanLeftRad: rad(45), leanRightRad: rad(-45) }),
    'Miter: the miters of a part 90 mm long meet. Such miters need at least 100 mm.',
  ],
  [
    withStock({ lengthMm: -1 }),
    'Stock length: -1 mm is not possible. Give a length above 0, and at most 10,000 m.',
  ],
  [withStock({ available: -1 }), 'Bars available: -1 is not a count. Give a whole number from 0 up.'],
  [withStock({ price: -2 }), 'Price: -2 is not a price. Give 0 or more, for one bar.'],
  [withStock({ price: Infinity }), 'Price: Infinity is not a price. Give 0 or more, for one bar.'],
  [
    { ...good, stocks: [stock, { lengthMm: 9000 }] },
    'Price: only 1 of 2 stock lengths have one. Give a price for each length, or for none to buy by length.',
  ],
  [{ ...good, kerfMm: -1 }, 'Kerf: -1 mm is not possible. Give 0 or a length above it.'],
  [{ ...good, trimMm: NaN }, 'End trim: NaN mm is not possible. Give 0 or a length above it.'],
  [{ ...good, gripMm: -1 }, 'Grip: -1 mm is not possible. Give 0 or a length above it.'],
  [{ ...good, keepMm: -1 }, 'Shortest drop to keep: -1 mm is not possible. Give 0 or a length above it.'],
  [{ ...good, widthMm: -1 }, 'Width: -1 mm is not possible. Give 0 or a length above it.'],
];

for (const [problem, sentence] of refused)
  test(`refuses: ${sentence}`, () => {
    expect(() => {
      requireStockProblem(problem);
    }).toThrow(expect.objectContaining({ name: 'InputError', message: sentence }));
  });

test('takes what is at the limits', () => {
  const atLimits = [
    good,
    withPart({ lengthMm: 1e7, pieces: 100_000 }),
    withPart({ lengthMm: 100, leanLeftRad: rad(45), leanRightRad: rad(-45) }),
    withPart({ lengthMm: 50, leanLeftRad: rad(45), leanRightRad: rad(45) }),
    withPart({ lengthMm: 5000, leanLeftRad: rad(85), leanRightRad: rad(-85) }),
    withStock({ available: 0 }),
  ];
  for (const problem of atLimits)
    expect(() => {
      requireStockProblem(problem);
    }).not.toThrow();
});
