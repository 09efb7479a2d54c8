import { describe, expect, it } from 'vitest';
import { angleRootRadiusMm } from '../../../src/core/section/angleRootRadius.js';

describe('angleRootRadiusMm', () => {
  it('is undefined for legs in no table, and for legs in the wrong order', () => {
    expect(angleRootRadiusMm(81, 80)).toBeUndefined();
    expect(angleRootRadiusMm(50, 100)).toBeUndefined();
  });

  it('does not shrink from one equal leg to the next larger', () => {
    const legs = [20, 25, 30, 35, 40, 45, 50, 60, 65, 70, 75, 80, 90, 100, 120, 130, 150, 160, 180, 200];
    const radii = legs.map((leg) => angleRootRadiusMm(leg, leg) ?? Number.NaN);
    expect(radii).toEqual([...radii].sort((a, b) => a - b));
    expect(radii[0]).toBe(3.5);
  });
});
