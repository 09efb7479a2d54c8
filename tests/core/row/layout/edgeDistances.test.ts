// What a hole needs to an edge. AISC 360-22 Table J3.4, bolt 3/4 in: 1 in; AISC 360-05 at a sheared edge: 1-1/4 in.
// EN 1993-1-8 Table 3.3: 1.2 · d0.
import { describe, expect, it } from 'vitest';
import type { HoleToEdge } from '../../../../src/core/part/edgeClearances.js';
import { edgeClearances } from '../../../../src/core/part/edgeClearances.js';
import { edgeDistances } from '../../../../src/core/row/layout/edgeDistances.js';
import { edgeKindsOf } from '../../../../src/core/row/layout/edgeKindsOf.js';
import { heldGroup } from '../../../../src/core/row/layout/heldGroup.js';
import { outcomeOf } from '../../../../src/core/row/layout/measured.js';
import type { HoleGroup } from '../../../../src/core/row/job/rowJob.js';
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
