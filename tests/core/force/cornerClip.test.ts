import { describe, expect, it } from 'vitest';
import { cornerClipForceN } from '../../../src/core/force/cornerClip.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const clip = { alongMm: 30, acrossMm: 40, thicknessMm: 10, shearStrengthMPa: 345 };

describe('cornerClipForceN: arguments', () => {
  it.each([
    ['alongMm', 'Corner clip'],
    ['acrossMm', 'Corner clip'],
    ['thicknessMm', 'Thickness'],
    ['shearStrengthMPa', 'Shear strength'],
  ])('refuses a %s that is not above zero or not finite', (name, argument) => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(refusal(() => cornerClipForceN({ ...clip, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('cornerClipForceN: limits', () => {
  it('nears the shorter cut as the clip becomes a strip', () => {
    expect(cornerClipForceN({ ...clip, alongMm: 1e-6 })).toBeCloseTo(40 * 3450, 3);
  });
});

describe('cornerClipForceN: values', () => {
  it('is the slanting cut × thickness × shear strength, whichever side comes first', () => {
    expect(cornerClipForceN(clip)).toBe(172_500);
    expect(cornerClipForceN({ ...clip, alongMm: 40, acrossMm: 30 })).toBe(172_500);
  });

  it('shows its working', () => {
    const steps = expectWorking((working) => cornerClipForceN(clip, working));
    expect(steps[0]?.result.value).toBe(50);
  });
});
