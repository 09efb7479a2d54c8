import { describe, expect, it } from 'vitest';
import { leastPieceMm } from '../../../src/core/rule/leastPiece.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

describe('leastPieceMm', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a size of %d', (thicknessMm) => {
    expect(refusal(() => leastPieceMm({ thicknessMm })).argument).toBe('Thickness');
  });

  it.each([
    [6, 25],
    [12.5, 25],
    [12.6, 25.2],
    [40, 80],
  ])('of %d mm is %d mm', (thicknessMm, leastMm) => {
    expect(leastPieceMm({ thicknessMm })).toBeCloseTo(leastMm, 9);
  });

  it('shows its working', () => {
    expectWorking((working) => leastPieceMm({ thicknessMm: 20 }, working));
  });
});
