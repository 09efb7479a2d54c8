import { describe, expect, it } from 'vitest';
import { strippingForceN } from '../../../src/core/force/strip.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const strip = { punchForceN: 200_000, strippingShare: 0.15 };

describe('strippingForceN: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a punching force of %d', (punchForceN) => {
    expect(refusal(() => strippingForceN({ ...strip, punchForceN })).argument).toBe('Punching force');
  });
});

describe('strippingForceN: limits', () => {
  it.each([0.049, 0.501, Number.NaN])('refuses a share of %d', (strippingShare) => {
    expect(refusal(() => strippingForceN({ ...strip, strippingShare })).argument).toBe('Stripping share');
  });

  it.each([0.05, 0.5])('accepts a share of %d', (strippingShare) => {
    expect(strippingForceN({ ...strip, strippingShare })).toBeCloseTo(200_000 * strippingShare, 6);
  });
});

describe('strippingForceN: values', () => {
  it('is the share of the punching force, with its working', () => {
    const steps = expectWorking((working) => strippingForceN(strip, working));
    expect(steps[0]?.result.value).toBeCloseTo(30_000, 6);
  });
});
