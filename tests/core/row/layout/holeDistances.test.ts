// What a hole needs to another. AISC 360-22 J3.4, bolt 3/4 in: spacing 2⅔ · 3/4 = 2 in, clear 3/4 in.
import { describe, expect, it } from 'vitest';
import { heldGroup } from '../../../../src/core/row/layout/heldGroup.js';
import { holeDistances } from '../../../../src/core/row/layout/holeDistances.js';
import { outcomeOf } from '../../../../src/core/row/layout/measured.js';
import type { HoleGroup } from '../../../../src/core/row/job/rowJob.js';
import { readBolt } from '../../../../src/core/rule/boltSize.js';
import { holeAt } from '../../../support/face.js';

const inch = 25.4;
const hole = { shape: 'round', diameterMm: 0.8125 * inch } as const;
const bolt = readBolt('3/4', 'Bolt', 'in');

function held(changes: Partial<HoleGroup>) {
  const group: HoleGroup = { number: 0, title: 'Hole', hole, count: 1, ...changes };
  const face = { id: 'plate', widthMm: 100, thicknessMm: 10, heel: false } as const;
  const process = { made: 'punch', punched: hole } as const;
  return heldGroup({ group, index: 0, face, thicknessMm: 10, process }, 'in', 'AISC');
}

describe('holeDistances', () => {
  const between = (mm: number, changes: Partial<HoleGroup>, free = false) => {
    const group = held(changes);
    const box = { x0: 0, x1: 60, y0: 0, y1: 0 };
    const [a, b] = [
      holeAt(100, 50, { hole }),
      holeAt(100 + mm, 50, { hole, ...(free ? { free: box } : {}) }),
    ];
    const rimMm = mm - hole.diameterMm;
    const rim = {
      least: { distance: rimMm, at: [a.center, b.center] as const },
      most: rimMm + (free ? 60 : 0),
    };
    return holeDistances([group, group], [a, b], rim, 'AISC').map((measured) => ({
      ...measured,
      outcome: outcomeOf(measured),
    }));
  };

  it('are 2⅔ diameters of the bolt from center to center, and its diameter of steel', () => {
    const [spacing, clear, practice] = between(50, { bolt });
    expect(spacing?.limit.least).toBeCloseTo(2 * inch, 6);
    expect(spacing).toMatchObject({
      kind: 'spacing by code',
      outcome: 'failed',
      given: { least: 50, most: 50 },
    });
    expect(clear?.limit.least).toBeCloseTo(0.75 * inch, 6);
    // 50 − 20.6375 = 29.36 mm of steel
    expect(clear).toMatchObject({ kind: 'clear distance by code', outcome: 'held' });
    expect(practice).toMatchObject({ kind: 'spacing by practice', outcome: 'held' });
    expect(between(50.8, { bolt })[0]?.outcome).toBe('held');
  });

  it('fail by no bolt that was read, and by press practice alone where there is none', () => {
    expect(between(50, {})[0]?.outcome).toBe('open');
    expect(between(30, { noBolt: true })).toMatchObject([{ kind: 'spacing by practice', outcome: 'failed' }]);
  });

  it('of a hole that is not placed span all its places', () => {
    expect(between(40, { bolt }, true)[0]).toMatchObject({
      outcome: 'open',
      given: { least: 40, most: 100 },
    });
  });
});
