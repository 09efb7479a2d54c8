import { describe, expect, it } from 'vitest';
import { exactly } from '../../../src/core/check/range.js';
import type { Piece } from '../../../src/core/row/piece.js';
import { handOf, shortOf } from '../../../src/core/say/pieceWords.js';

const piece: Piece = { longMm: 300, short: exactly(200), leftLong: exactly(300), hand: 'both' };

describe('shortOf', () => {
  it('is the edge, 0 of a point, and nothing where the miters leave no piece', () => {
    expect(shortOf(piece)).toBe(200);
    expect(shortOf({ ...piece, short: exactly(0) })).toBe(0);
    expect(shortOf({ ...piece, short: exactly(-1) })).toBeUndefined();
    expect(shortOf(undefined)).toBeUndefined();
  });

  it.each([
    ['Long side', 'not known: Long side is blank'],
    ['Miter leg', 'not known: Miter leg is blank'],
    ['how it lies', 'not known: the section may lie in two ways'],
  ] as const)('says what leaves it open: %s', (gap, words) => {
    expect(shortOf({ ...piece, short: { least: 100, most: 200 }, gap })).toBe(words);
    expect(handOf({ ...piece, hand: { gap } })).toBe(words);
  });
});

describe('handOf', () => {
  it('is the hand, and empty without a miter', () => {
    expect(handOf(piece)).toBe('both');
    expect(handOf({ longMm: 300, short: exactly(300), leftLong: exactly(300) })).toBe('');
    expect(handOf(undefined)).toBe('');
  });
});
