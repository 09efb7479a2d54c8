import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { feetInchText } from '../../../src/core/quantity/feetInch.js';
import { sizePieces } from '../../../src/core/quantity/sizePieces.js';

describe('the pieces of a text with sizes', () => {
  it('are words at even places and sizes at odd ones', () => {
    expect(sizePieces('die Ø1-11/32, stop at 9\'-4 1/2"')).toEqual([
      'die Ø',
      '1-11/32',
      ', stop at ',
      '9\'-4 1/2"',
      '',
    ]);
    expect(sizePieces('6 × 7/8 in of A572-50')).toEqual(['6 × 7/8 in of A572-50']);
  });

  it('are the whole text again, and a length in feet is one of them', () => {
    fc.assert(
      fc.property(fc.integer({ min: 64, max: 64_000 }), fc.string(), (parts, words) => {
        const length = feetInchText({ lengthMm: (parts / 64) * 25.4, denominator: 64 });
        const text = `${words} ${length}`;
        expect(sizePieces(text).join('')).toBe(text);
        if (length.includes('/')) expect(sizePieces(`at ${length}`)[1]).toBe(length);
      }),
    );
  });
});
