import { describe, expect, it } from 'vitest';
import { type Piece, pieceOf } from '../../../src/core/row/piece.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';

type Row = Parameters<typeof pieceOf>[0];
const rad = Math.PI / 4;
const both = { miterLeftRad: rad, miterRightRad: rad };

function piece(section: string, row: Partial<Omit<Row, 'section'>> = {}): Piece | undefined {
  const read = readAnySection(section, 'Section', 'mm').section;
  return pieceOf({ section: read, lengthMm: 300, miterLeftRad: 0, miterRightRad: 0, ...row }, 'mm');
}

describe('pieceOf', () => {
  it('is not known without a length, and has no hand without a miter', () => {
    const read = readAnySection('FB 10x50', 'Section', 'mm').section;
    expect(pieceOf({ section: read, miterLeftRad: 0, miterRightRad: 0 }, 'mm')).toBeUndefined();
    expect(piece('FB 10x50')).toEqual({
      longMm: 300,
      short: { least: 300, most: 300 },
      leftLong: { least: 300, most: 300 },
    });
  });

  it('of a piece of a frame has both hands, toes in or out', () => {
    for (const side of ['heel', 'toe'] as const) {
      const found = piece('L50x50x5', { ...both, longSide: { left: side, right: side } });
      expect(found).toMatchObject({ longMm: 300, hand: 'both' });
      expect(found?.short.least).toBeCloseTo(200, 9);
      expect(found?.leftLong.least).toBe(300);
    }
  });

  it('of a brace between parallel rails has one hand, and its edge at the stop', () => {
    const found = piece('L50x50x5', { ...both, longSide: { left: 'toe', right: 'heel' } });
    expect(found?.hand).toBe('right');
    expect(found?.leftLong.least).toBeCloseTo(250, 9);
    expect(piece('L50x50x5', { ...both, longSide: { left: 'heel', right: 'toe' } })?.hand).toBe('left');
  });

  it.each([
    ['FB 10x50', 'none'],
    ['RD 25', 'none'],
    ['RHS50x50x3', 'none'],
    ['HEA200', 'none'],
    ['UPN100', { gap: 'how it lies' }],
    ['T60x50x6', { gap: 'how it lies' }],
    ['L50x50x5', { gap: 'Long side' }],
  ])('of %s with one miter: %j', (section, hand) => {
    expect(piece(section, { miterLeftRad: rad })?.hand).toEqual(hand);
  });

  it('has no hand where both of two equal legs are mitered', () => {
    const made = { ...both, miterLeg: 'both', longSide: { left: 'heel', right: 'heel' } } as const;
    expect(piece('L50x50x5', made)?.hand).toBe('none');
    expect(piece('L60x40x5', made)?.hand).toBe('both');
  });

  it('of right-hand and left-hand pieces in one row has both', () => {
    const row = { miterLeftRad: rad, longSide: { left: 'heel' }, hands: { left: 2, right: 2 } } as const;
    expect(piece('L50x50x5', row)?.hand).toBe('both');
    expect(piece('L50x50x5', { ...row, hands: { left: 0, right: 2 } })?.hand).toBe('left');
  });

  it('names the cell that would settle a side', () => {
    expect(piece('FB 10x50', both)).toMatchObject({ gap: 'Long side' });
    expect(piece('L60x40x5', { miterLeftRad: rad })).toMatchObject({ gap: 'Miter leg' });
    expect(piece('UPN100', { miterLeftRad: rad })).toMatchObject({ gap: 'how it lies' });
    expect(piece('L50x50x5', { miterLeftRad: rad })).not.toHaveProperty('gap');
  });

  it('has no hand where the miters leave no piece', () => {
    const longSide = { left: 'heel', right: 'heel' } as const;
    expect(piece('L50x50x5', { ...both, longSide, lengthMm: 90 })).not.toHaveProperty('hand');
  });

  it('takes the size of bars and square tubes', () => {
    expect(piece('RD 25', { miterLeftRad: rad })?.short.least).toBeCloseTo(275, 9);
    expect(piece('RHS50x50x3', both)?.short).toMatchObject({ most: expect.closeTo(250, 9) as number });
  });
});
