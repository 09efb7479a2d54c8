// What a hole needs to an edge and to another hole. AISC 360-22 Table J3.4, bolt 3/4 in: 1 in; AISC 360-05 at a sheared
// edge: 1-1/4 in. Spacing 2⅔ · 3/4 = 2 in. EN 1993-1-8 Table 3.3: 1.2 · d0.
import { describe, expect, it } from 'vitest';
import type { HoleToEdge } from '../../../../src/core/part/edgeClearances.js';
import { edgeClearances } from '../../../../src/core/part/edgeClearances.js';
import { edgeDistances, holeDistances } from '../../../../src/core/row/layout/distanceLimits.js';
import { edgeKindsOf } from '../../../../src/core/row/layout/edgeKindsOf.js';
import { heldGroup } from '../../../../src/core/row/layout/heldGroup.js';
import { outcomeOf } from '../../../../src/core/row/layout/measured.js';
import type { HoleGroup } from '../../../../src/core/row/rowJob.js';
import { readBolt } from '../../../../src/core/rule/boltSize.js';
import type { EdgeCode } from '../../../../src/core/rule/edgeDistance.js';
import { readAnySection } from '../../../../src/core/section/readAnySection.js';
import type { Edge } from '../../../../src/core/part/outline.js';
import { holeAt, plateFace } from '../../../support/face.js';

const inch = 25.4;
const hole = { shape: 'round', diameterMm: 0.8125 * inch } as const;
const section = readAnySection('PL10x100', 'Section', 'mm').section;
const bolt = readBolt('3/4', 'Bolt', 'in');

function held(changes: Partial<HoleGroup>, code: EdgeCode = 'AISC') {
  const group: HoleGroup = { number: 0, title: 'Hole', hole, count: 1, ...changes };
  const face = { id: 'plate', widthMm: 100, thicknessMm: 10, heel: false } as const;
  const process = { made: 'punch', punched: hole } as const;
  return heldGroup({ group, index: 0, face, thicknessMm: 10, process }, 'in', code);
}

/** A hole so far from the bottom edge, which is not said to be rolled or sheared unless `edgeKind` does. */
function toBottom(yMm: number, changes: Partial<HoleGroup>, code: EdgeCode = 'AISC') {
  const group = held(changes, code);
  const met: [Edge, HoleToEdge][] = [];
  const placed = holeAt(150, yMm, { hole: group.group.hole });
  edgeClearances(plateFace(), [placed], (_, edge, clearances) => met.push([edge, clearances]));
  const bottom = met.find(([edge]) => edge.cause.is === 'bottom edge');
  const kinds = bottom && edgeKindsOf({ section }, group.group, bottom[0]);
  if (!bottom || !kinds) throw new Error('no bottom edge');
  return edgeDistances(group, placed, bottom[0], bottom[1], kinds, code).map((measured) => ({
    ...measured,
    outcome: outcomeOf(measured),
  }));
}

describe('edgeDistances', () => {
  it('are certain where the row gives the bolt and how the edge is made', () => {
    const [byCode, byPractice] = toBottom(30, { bolt, edgeKind: 'sheared' });
    expect(byCode?.limit.least).toBeCloseTo(1.25 * inch, 6);
    expect(byCode?.limit.most).toBeCloseTo(1.25 * inch, 6);
    expect(byCode).toMatchObject({ kind: 'edge by code', outcome: 'failed', given: { least: 30, most: 30 } });
    // Half of 20.6375 is more than the thickness, 10; the rim is at 30 − 10.32 = 19.68.
    expect(byPractice?.limit.least).toBeCloseTo(0.40625 * inch, 6);
    expect(byPractice).toMatchObject({ kind: 'edge by practice', outcome: 'held' });
  });

  it('fail only under the mildest where the edge may be any, and hold from the strictest', () => {
    const [open] = toBottom(30, { bolt });
    expect(open?.limit.least).toBeCloseTo(inch, 6);
    expect(open?.limit.most).toBeCloseTo(1.25 * inch, 6);
    expect(open).toMatchObject({ outcome: 'open', basis: { edge: 'sheared', edgeRead: true } });
    expect(toBottom(25, { bolt })[0]?.outcome).toBe('failed');
    expect(toBottom(31.75, { bolt })[0]?.outcome).toBe('held');
  });

  it('never fail by a bolt that was read from the hole, and ask nothing where there is none', () => {
    const [read] = toBottom(15, { edgeKind: 'sheared' });
    expect(read).toMatchObject({ outcome: 'open', limit: { least: 0 }, basis: { boltRead: true } });
    expect(toBottom(15, { noBolt: true }).map(({ kind }) => kind)).toEqual(['edge by practice']);
  });

  it('go by the hole under EN, whatever the edge', () => {
    // 1.2 · 20.6375 = 24.765 mm
    const [byCode] = toBottom(24.7, { bolt }, 'EN');
    expect(byCode?.limit.least).toBeCloseTo(24.765, 6);
    expect(byCode?.outcome).toBe('failed');
    expect(toBottom(24.765, { bolt }, 'EN')[0]?.outcome).toBe('held');
  });

  it('measure a slot towards the edge from the center of its end radius under EN: 1.5 · d0', () => {
    const slot = { shape: 'slot', widthMm: 22, lengthMm: 50 } as const;
    const group: Partial<HoleGroup> = { hole: slot, bolt: readBolt('M20', 'Bolt', 'mm') };
    const [along] = toBottom(33, group, 'EN');
    expect(along).toMatchObject({ from: 'end radius', limit: { least: 33, most: 33 }, outcome: 'held' });
  });
});

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
