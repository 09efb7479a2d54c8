import { describe, expect, it } from 'vitest';
import { circleHoles } from '../../../src/core/layout/circleHoles.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const circle = { diameterMm: 200, count: 4, startRad: 0, center: { x: 0, y: 0 } };

describe('circleHoles', () => {
  it('refuses a diameter that is not above zero', () => {
    expect(refusal(() => circleHoles({ ...circle, diameterMm: 0 })).argument).toBe('Diameter');
  });

  it('goes counter-clockwise from the first hole, without digits of rounding on the axes', () => {
    expect(circleHoles(circle)).toEqual([
      { x: 100, y: 0 },
      { x: 0, y: 100 },
      { x: -100, y: 0 },
      { x: 0, y: -100 },
    ]);
    expect(circleHoles({ ...circle, count: 1, startRad: Math.PI / 2, center: { x: 10, y: 20 } })).toEqual([
      { x: 10, y: 120 },
    ]);
  });

  it('shows its working', () => {
    const steps = expectWorking((working) => circleHoles({ ...circle, count: 6 }, working).length);
    expect(steps[0]?.result.value).toBeCloseTo(100, 12);
    expect(expectWorking((working) => circleHoles({ ...circle, count: 1 }, working).length)).toHaveLength(1);
  });
});
