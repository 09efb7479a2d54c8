import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { notchForceN } from '../../../src/core/force/notch.js';
import { notchBites } from '../../../src/core/force/notchBites.js';
import { Working } from '../../../src/core/working/working.js';
import { refusal, refusalText } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const notch = {
  widthMm: 100,
  depthMm: 40,
  where: 'edge',
  toolWidthMm: 60,
  toolDepthMm: 50,
  thicknessMm: 10,
  shearStrengthMPa: 345,
} as const;
const size = fc.double({ min: 1, max: 400, noNaN: true });

describe('notchBites: arguments', () => {
  it.each([
    ['widthMm', 'Width'],
    ['depthMm', 'Depth'],
    ['toolWidthMm', 'Tool width'],
    ['toolDepthMm', 'Tool depth'],
    ['thicknessMm', 'Thickness'],
    ['shearStrengthMPa', 'Shear strength'],
  ])('refuses a %s that is not above zero', (name, argument) => {
    for (const bad of [0, -1, Number.NaN]) {
      expect(refusal(() => notchBites({ ...notch, [name]: bad })).argument).toBe(argument);
    }
  });
});

describe('notchBites: limits', () => {
  it('a notch of the size of the tool is one bite, whatever unit it was typed in', () => {
    const tool = { toolWidthMm: 2.4 * 25.4, toolDepthMm: 1.1 * 25.4 };
    expect(notchBites({ ...notch, ...tool, widthMm: 60.96, depthMm: 27.94 }).count).toBe(1);
    expect(notchBites({ ...notch, ...tool, widthMm: 60.97, depthMm: 27.94 }).count).toBe(2);
    expect(notchBites({ ...notch, ...tool, widthMm: 3 * 60.96, depthMm: 27.94 }).count).toBe(3);
  });

  it('in an edge the first bite is as wide as the narrowest tool, the last at least half of it', () => {
    const fixed = { ...notch, toolWidthMm: 60, narrowestMm: 60 };
    expect(notchBites({ ...fixed, widthMm: 60 })).toMatchObject({ count: 1, biteWidthMm: 60 });
    expect(notchBites({ ...fixed, widthMm: 90 })).toMatchObject({ count: 2, biteWidthMm: 60 });
    expect(refusalText(() => notchBites({ ...fixed, widthMm: 89 }))).toContain('under half the tool');
    expect(refusalText(() => notchBites({ ...fixed, widthMm: 61 }))).toContain('sideways');
    // With narrower tools on hand the bites are equal again.
    expect(notchBites({ ...fixed, widthMm: 61, narrowestMm: 20 })).toMatchObject({
      count: 2,
      biteWidthMm: 30.5,
    });
  });

  it('with a tool of one width, what is left is shared by the other bites and must be as wide as the steel is thick', () => {
    const fixed = { ...notch, toolWidthMm: 60, narrowestMm: 60, widthMm: 130 };
    // 130 = 60 + 35 + 35
    expect(notchBites({ ...fixed, thicknessMm: 35 })).toMatchObject({ count: 3, biteWidthMm: 60 });
    expect(refusalText(() => notchBites({ ...fixed, thicknessMm: 35.1 }))).toContain('thinner');
  });

  it('a notch of one bite is not held to half the tool: it has no last bite', () => {
    const corner = { ...notch, where: 'corner', widthMm: 25, toolWidthMm: 60, narrowestMm: 60 } as const;
    expect(notchBites(corner)).toMatchObject({ count: 1, biteWidthMm: 25 });
  });

  it('a tool without a limit takes any notch in one bite', () => {
    expect(notchBites({ ...notch, toolWidthMm: Infinity, toolDepthMm: Infinity }).count).toBe(1);
  });

  it('refuses bites thinner than the material, not bites as thick as it', () => {
    const narrow = { ...notch, widthMm: 20, toolWidthMm: 15 };
    expect(notchBites({ ...narrow, thicknessMm: 10 }).biteWidthMm).toBe(10);
    expect(refusalText(() => notchBites({ ...narrow, thicknessMm: 10.01 }))).toContain('sideways');
    const shallow = { ...notch, depthMm: 20, toolDepthMm: 15 };
    expect(notchBites({ ...shallow, thicknessMm: 10 }).biteDepthMm).toBe(10);
    expect(refusal(() => notchBites({ ...shallow, thicknessMm: 10.01 })).argument).toBe('Notch');
  });

  it('refuses a single bite thinner than the material, too', () => {
    expect(refusal(() => notchBites({ ...notch, widthMm: 5, depthMm: 50 })).argument).toBe('Notch');
    expect(refusal(() => notchBites({ ...notch, widthMm: 50, depthMm: 5 })).argument).toBe('Notch');
  });

  it('refuses a vee bigger than its tool', () => {
    expect(notchBites({ ...notch, where: 'vee', widthMm: 60 }).count).toBe(1);
    expect(refusal(() => notchBites({ ...notch, where: 'vee', widthMm: 60.1 })).argument).toBe('Notch');
  });
});

describe('notchBites: values', () => {
  it.each([
    [60, 50, 1],
    [61, 50, 2],
    [100, 40, 2],
    [120, 51, 4],
    [200, 150, 12],
  ])('%d × %d with a tool 60 × 50: %d bites', (widthMm, depthMm, count) => {
    expect(notchBites({ ...notch, widthMm, depthMm }).count).toBe(count);
  });

  it('takes the force of one bite cut on every side', () => {
    const bites = notchBites(notch);
    expect(bites).toEqual({ count: 2, biteWidthMm: 50, biteDepthMm: 40, forceN: 130 * 3450 });
    expect(bites.forceN).toBe(notchForceN({ ...notch, widthMm: 50 }));
  });

  it('bites are equal, within the tool, and at least half of it in a divided direction', () => {
    fc.assert(
      fc.property(size, size, size, size, (widthMm, depthMm, toolWidthMm, toolDepthMm) => {
        const input = { ...notch, widthMm, depthMm, toolWidthMm, toolDepthMm, thicknessMm: 1e-6 };
        const { biteWidthMm, biteDepthMm, count } = notchBites(input);
        expect(biteWidthMm).toBeLessThanOrEqual(toolWidthMm * (1 + 1e-8));
        expect(biteDepthMm).toBeLessThanOrEqual(toolDepthMm * (1 + 1e-8));
        expect(biteWidthMm * biteDepthMm * count).toBeCloseTo(widthMm * depthMm, 4);
        if (widthMm > toolWidthMm * 1.000001) expect(biteWidthMm).toBeGreaterThan(toolWidthMm / 2);
        if (depthMm > toolDepthMm * 1.000001) expect(biteDepthMm).toBeGreaterThan(toolDepthMm / 2);
      }),
    );
  });

  it('shows its working; the bites only where there are several', () => {
    expectWorking((working) => notchBites(notch, working).forceN);
    const titles = (widthMm: number) => {
      const working = new Working();
      notchBites({ ...notch, widthMm }, working);
      return working.steps.map(({ title }) => title);
    };
    expect(titles(100)[0]).toBe('Bites of the notch');
    expect(titles(60)).toEqual(['Cut of the edge notch', 'Notching force']);
  });
});
