import { describe, expect, it } from 'vitest';
import { leastHoleToBendMm } from '../../../src/core/rule/holeToBend.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

describe('leastHoleToBendMm', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a size of %d', (size) => {
    const call = (thicknessMm: number, insideRadiusMm: number) =>
      refusal(() => leastHoleToBendMm({ thicknessMm, insideRadiusMm })).argument;
    expect(call(size, 9)).toBe('Thickness');
    expect(call(6, size)).toBe('Inside radius');
  });

  it('is twice the thickness and the inside radius, with its working', () => {
    const steps = expectWorking((working) =>
      leastHoleToBendMm({ thicknessMm: 6, insideRadiusMm: 9 }, working),
    );
    expect(steps[0]?.result.value).toBe(21);
  });
});
