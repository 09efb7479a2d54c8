import { describe, expect, it } from 'vitest';
import { veeOpeningMm } from '../../../src/core/tooling/veeOpening.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

describe('veeOpeningMm', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a thickness of %d', (thicknessMm) => {
    expect(refusal(() => veeOpeningMm({ thicknessMm, veeRatio: 10 })).argument).toBe('Thickness');
  });

  it.each([3.9, 20.1, Number.NaN])('refuses a ratio of %d', (veeRatio) => {
    expect(refusal(() => veeOpeningMm({ thicknessMm: 6, veeRatio })).argument).toBe('V opening ratio');
  });

  it.each([4, 10, 20])('is %d times the thickness, with its working', (veeRatio) => {
    const steps = expectWorking((working) => veeOpeningMm({ thicknessMm: 6, veeRatio }, working));
    expect(steps[0]?.result.value).toBe(6 * veeRatio);
  });
});
