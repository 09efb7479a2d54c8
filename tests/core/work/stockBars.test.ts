import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { stockBars } from '../../../src/core/work/stockBars.js';

describe('stockBars', () => {
  it.each([
    [30, 600, 0, 6000, 3, 10],
    [31, 600, 0, 6000, 4, 10],
    [10, 600, 3, 6000, 2, 9],
    [4, 7000, 3, 6000, 4, 1],
    [1, 10, 0, 6000, 1, 600],
  ])('%i pieces of %i mm with %i lost from %i mm', (pieces, pieceMm, lossMm, barMm, count, piecesEach) => {
    expect(stockBars({ pieces, pieceMm, lossMm, barMm })).toMatchObject({ count, piecesEach });
  });

  it('gives bars that hold all pieces, and one bar fewer would not', () => {
    const lengths = fc.record({
      pieces: fc.integer({ min: 1, max: 2000 }),
      pieceMm: fc.integer({ min: 20, max: 9000 }),
      lossMm: fc.integer({ min: 0, max: 12 }),
      barMm: fc.integer({ min: 1000, max: 12000 }),
    });
    fc.assert(
      fc.property(lengths, (given) => {
        const { count, piecesEach, lengthMm } = stockBars(given);
        // Between n pieces lie n − 1 cuts; the trim cut is the one more.
        expect(piecesEach * given.pieceMm + (piecesEach - 1) * given.lossMm).toBeLessThanOrEqual(
          lengthMm + 1e-6,
        );
        expect(count * piecesEach).toBeGreaterThanOrEqual(given.pieces);
        expect((count - 1) * piecesEach).toBeLessThan(given.pieces);
      }),
    );
  });
});
