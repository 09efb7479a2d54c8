import { describe, expect, it } from 'vitest';
import { dieOpening } from '../../../src/core/tooling/dieOpening.js';
import type { Hole } from '../../../src/core/tooling/hole.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const round: Hole = { shape: 'round', diameterMm: 22 };
const slot: Hole = { shape: 'slot', widthMm: 22, lengthMm: 50 };

describe('dieOpening: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a clearance or a hole of %d', (size) => {
    expect(refusal(() => dieOpening({ hole: round, totalClearanceMm: size })).argument).toBe(
      'Total clearance',
    );
    const hole = { ...round, diameterMm: size };
    expect(refusal(() => dieOpening({ hole, totalClearanceMm: 1 })).argument).toBe('Hole');
  });

  it('refuses a slot without an end', () => {
    const hole = { ...slot, lengthMm: Infinity };
    expect(refusal(() => dieOpening({ hole, totalClearanceMm: 1 })).argument).toBe('Hole');
  });
});

describe('dieOpening: limits', () => {
  it('has a length for slots and rectangles only', () => {
    const shapes: Hole[] = [round, { shape: 'square', sideMm: 20 }, { shape: 'hexagon', acrossFlatsMm: 20 }];
    for (const hole of shapes) expect(dieOpening({ hole, totalClearanceMm: 1 }).lengthMm).toBeUndefined();
  });
});

describe('dieOpening: values', () => {
  it.each([
    [round, 22.8, undefined],
    [{ shape: 'square', sideMm: 20 }, 20.8, undefined],
    [{ shape: 'hexagon', acrossFlatsMm: 19 }, 19.8, undefined],
    [slot, 22.8, 50.8],
    [{ shape: 'rectangle', widthMm: 40, lengthMm: 30 }, 30.8, 40.8],
  ] as [Hole, number, number | undefined][])('adds the clearance once to each dimension', (hole, w, l) => {
    const opening = dieOpening({ hole, totalClearanceMm: 0.8 });
    expect(opening.widthMm).toBeCloseTo(w, 9);
    expect(opening.lengthMm ?? 0).toBeCloseTo(l ?? 0, 9);
  });

  it.each([round, slot])('shows its working, the width last', (hole) => {
    const steps = expectWorking((working) => dieOpening({ hole, totalClearanceMm: 0.8 }, working).widthMm);
    expect(steps).toHaveLength(hole.shape === 'slot' ? 2 : 1);
  });
});
