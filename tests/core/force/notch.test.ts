import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notchForceN } from '../../../src/core/force/notch.js';
import { notchCutLengthMm, notchPlaces } from '../../../src/core/force/notchCutLength.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const notch = { widthMm: 60, depthMm: 40, where: 'edge', thicknessMm: 10, shearStrengthMPa: 345 } as const;
const size = fc.double({ min: 1, max: 300, noNaN: true });

describe('notchForceN: arguments', () => {
  it.each([
    ['widthMm', 'Width'],
    ['depthMm', 'Depth'],
    ['thicknessMm', 'Thickness'],
    ['shearStrengthMPa', 'Shear strength'],
  ])('refuses a %s that is not above zero or not finite', (name, argument) => {
    for (const bad of [0, -1, Number.NaN, Infinity]) {
      expect(refusal(() => notchForceN({ ...notch, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('notchForceN: limits', () => {
  it('a vee of no width would be two cuts of its depth, one of no depth a cut of its width', () => {
    expect(notchCutLengthMm({ widthMm: 1e-9, depthMm: 40, where: 'vee' })).toBeCloseTo(80, 9);
    expect(notchCutLengthMm({ widthMm: 60, depthMm: 1e-9, where: 'vee' })).toBeCloseTo(60, 9);
  });
});

describe('notchForceN: values', () => {
  it.each([
    ['edge', 140],
    ['corner', 100],
    ['vee', 100],
  ] as const)('%s: a cut of %d mm', (where, cutMm) => {
    expect(notchCutLengthMm({ ...notch, where })).toBeCloseTo(cutMm, 9);
    expect(notchForceN({ ...notch, where })).toBeCloseTo(cutMm * 3450, 6);
  });

  it('each place has a rule of its own', () => {
    const cut = (where: (typeof notchPlaces)[number]) =>
      notchCutLengthMm({ widthMm: 60, depthMm: 15, where });
    expect([cut('edge'), cut('corner')]).toEqual([90, 75]);
    expect(cut('vee')).toBeCloseTo(Math.sqrt(4500), 9);
  });

  it('an edge notch takes more than a corner notch or a vee of its size', () => {
    fc.assert(
      fc.property(size, size, (widthMm, depthMm) => {
        const force = (where: (typeof notchPlaces)[number]) =>
          notchForceN({ ...notch, widthMm, depthMm, where });
        expect(force('edge')).toBeGreaterThan(force('corner'));
        expect(force('edge')).toBeGreaterThan(force('vee'));
      }),
    );
  });

  it.each(notchPlaces)('shows its working at the place %s; square corners bring a caution', (where) => {
    const steps = expectWorking((working) => notchForceN({ ...notch, where }, working));
    expect(steps.map(({ result }) => result.symbol)).toEqual(['l', 'F']);
    expect(steps[1]?.cautions ?? []).toHaveLength(where === 'vee' ? 0 : 1);
  });
});
