import { describe, expect, it } from 'vitest';
import { leastFlangeMm } from '../../../src/core/tooling/leastFlange.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

describe('leastFlangeMm', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses an opening of %d', (veeMm) => {
    expect(refusal(() => leastFlangeMm({ veeMm })).argument).toBe('V opening');
  });

  it('is 0.77 of the V', () => {
    expect(leastFlangeMm({ veeMm: 100 })).toBe(77);
  });

  it('shows its working', () => {
    expectWorking((working) => leastFlangeMm({ veeMm: 60 }, working));
  });
});
