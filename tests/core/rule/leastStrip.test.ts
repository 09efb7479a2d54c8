import { describe, expect, it } from 'vitest';
import { leastStripWidthMm } from '../../../src/core/rule/leastStrip.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

describe('leastStripWidthMm', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a thickness of %d', (thicknessMm) => {
    expect(refusal(() => leastStripWidthMm({ thicknessMm })).argument).toBe('Thickness');
  });

  it('is eight times the thickness', () => {
    expect(leastStripWidthMm({ thicknessMm: 10 })).toBe(80);
  });

  it('shows its working', () => {
    expectWorking((working) => leastStripWidthMm({ thicknessMm: 10 }, working));
  });
});
