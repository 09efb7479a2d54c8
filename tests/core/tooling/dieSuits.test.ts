import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dieOpening } from '../../../src/core/tooling/dieOpening.js';
import { dieSuits } from '../../../src/core/tooling/dieSuits.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import { refusal } from '../../support/refusal.js';

const round = (diameterMm: number): Hole => ({ shape: 'round', diameterMm });
const oblong = (shape: 'slot' | 'rectangle', widthMm: number, lengthMm: number): Hole => ({
  shape,
  widthMm,
  lengthMm,
});
const suits = (die: Hole, punch: Hole, clearanceMm = 0.8) => dieSuits({ die, punch, clearanceMm });

/** A hole with a gap added to its sides. */
function opened(hole: Hole, widthGapMm: number, lengthGapMm: number): Hole {
  switch (hole.shape) {
    case 'round':
      return round(hole.diameterMm + widthGapMm);
    case 'square':
      return { shape: 'square', sideMm: hole.sideMm + widthGapMm };
    case 'hexagon':
      return { shape: 'hexagon', acrossFlatsMm: hole.acrossFlatsMm + widthGapMm };
    default:
      return oblong(hole.shape, hole.widthMm + widthGapMm, hole.lengthMm + lengthGapMm);
  }
}

const holes: Hole[] = [
  round(22),
  { shape: 'square', sideMm: 20 },
  { shape: 'hexagon', acrossFlatsMm: 24 },
  oblong('slot', 22, 50),
  oblong('rectangle', 25, 50),
];

describe('dieSuits: arguments', () => {
  it('refuses sizes that are not above zero', () => {
    expect(refusal(() => suits(round(0), round(22))).argument).toBe('Die');
    expect(refusal(() => suits(round(22), round(0))).argument).toBe('Punch');
    expect(refusal(() => suits(round(22.8), round(22), 0)).argument).toBe('Total clearance');
  });
});

describe('dieSuits: limits', () => {
  it.each(holes)('a $shape takes from half to twice the clearance, and rounding of sizes', (hole) => {
    for (const gap of [0.4, 0.8, 1.6]) expect(suits(opened(hole, gap, gap), hole), String(gap)).toBe(true);
    for (const gap of [-0.8, 0, 0.34, 1.66]) expect(suits(opened(hole, gap, gap), hole)).toBe(false);
  });

  it.each(holes.filter(({ shape }) => shape === 'slot' || shape === 'rectangle'))(
    'a $shape must fit in both directions',
    (hole) => {
      expect(suits(opened(hole, 0.8, 20), hole)).toBe(false);
      expect(suits(opened(hole, 20, 0.8), hole)).toBe(false);
      expect(suits(opened(hole, 0.8, 0), hole)).toBe(false);
    },
  );

  it('a die of another shape does not suit, and a rectangle may be named either way', () => {
    expect(suits({ shape: 'square', sideMm: 22.8 }, round(22))).toBe(false);
    expect(suits(oblong('rectangle', 50.8, 25.8), oblong('rectangle', 25, 50))).toBe(true);
  });
});

describe('dieSuits: values', () => {
  it('the opening made for a hole and a clearance suits it', () => {
    const clearance = fc.double({ min: 0.1, max: 3, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...holes), clearance, (hole, totalClearanceMm) => {
        const { widthMm, lengthMm = widthMm } = dieOpening({ hole, totalClearanceMm });
        const die = opened(hole, totalClearanceMm, totalClearanceMm);
        expect(suits(die, hole, totalClearanceMm)).toBe(true);
        expect(lengthMm).toBeGreaterThanOrEqual(widthMm);
      }),
    );
  });
});
