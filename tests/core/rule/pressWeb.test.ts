import { describe, expect, it } from 'vitest';
import { leastWebMm } from '../../../src/core/rule/pressWeb.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

describe('leastWebMm: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses %d', (bad) => {
    expect(refusal(() => leastWebMm({ thicknessMm: bad, holeDimensionMm: 20 })).argument).toBe('Thickness');
    expect(refusal(() => leastWebMm({ thicknessMm: 10, holeDimensionMm: bad })).argument).toBe('Hole');
  });
});

describe('leastWebMm: limits', () => {
  it('is the thickness up to a hole of twice the thickness, half the hole above', () => {
    expect(leastWebMm({ thicknessMm: 10, holeDimensionMm: 20 })).toBe(10);
    expect(leastWebMm({ thicknessMm: 10, holeDimensionMm: 20.2 })).toBeCloseTo(10.1, 12);
  });
});

describe('leastWebMm: values', () => {
  it.each([
    [10, 11, 10],
    [10, 22, 11],
    [6, 40, 20],
  ])('of %d mm with a hole of %d mm is %d mm', (thicknessMm, holeDimensionMm, webMm) => {
    expect(leastWebMm({ thicknessMm, holeDimensionMm })).toBe(webMm);
  });

  it('shows its working', () => {
    expectWorking((working) => leastWebMm({ thicknessMm: 10, holeDimensionMm: 22 }, working));
  });
});
