// Bends in plate 10 mm thick made in a V of 60 mm: R = 60 / 6 = 10 mm, so 2 · 10 + 10 = 30 mm from the rim of a hole to the
// line, and 0.77 · 60 = 46.2 mm from line to edge and from line to line.
import { describe, expect, it } from 'vitest';
import { bendDistances } from '../../../../src/core/row/layout/bendDistances.js';
import { bendLinesOf } from '../../../../src/core/row/layout/bendLines.js';
import type { Layout } from '../../../../src/core/row/layout/layoutOf.js';
import type { PartPlace } from '../../../../src/core/row/job/rowJob.js';
import { holeAt, plateFace } from '../../../support/face.js';

const plate = { lengthMm: 300, widthMm: 100 };

function distances(places: readonly PartPlace[], { holes = [], endless = false }: Partial<HolesOn> = {}) {
  const group = { number: 0, title: 'Hole', hole: { shape: 'round', diameterMm: 20 }, count: 1 } as const;
  const laid = { group, index: 0, holes, rigid: true, readings: [], missing: [] };
  const layout: Layout = {
    lengthMm: 300,
    endless,
    faces: [plateFace()],
    groups: [laid],
    bends: bendLinesOf(places, plate),
  };
  return bendDistances(layout, 60).map((finding) => {
    if (finding.rule !== 'distance') throw new Error(finding.rule);
    const { kind, outcome, given, limit, between } = finding;
    return { kind, outcome, mm: given.most, leastMm: limit.least, to: between[1] };
  });
}

interface HolesOn {
  holes: ReturnType<typeof holeAt>[];
  endless: boolean;
}

const left = (fromMm: number): PartPlace => ({ at: 'end', end: 'left', fromMm });

describe('bendDistances', () => {
  it('asks for steel from the rim of a hole to the bend', () => {
    // The line at 150 mm, the rim at 110 + 10 = 120: 30 mm.
    const [held] = distances([left(150)], { holes: [holeAt(110, 50)] });
    expect(held).toMatchObject({ kind: 'hole to bend', outcome: 'held' });
    expect(held?.mm).toBeCloseTo(30, 9);
    expect(held?.leastMm).toBeCloseTo(30, 9);
    expect(distances([left(150)], { holes: [holeAt(111, 50)] })[0]).toMatchObject({ outcome: 'failed' });
  });

  it('asks for a flange on either side of the line', () => {
    const [flange] = distances([left(46.2)]);
    expect(flange).toMatchObject({ kind: 'flange', outcome: 'held' });
    const [short] = distances([left(46)]);
    expect(short).toMatchObject({ outcome: 'failed', mm: 46, to: { cause: { is: 'left end' } } });
    expect(distances([left(254)])[0]).toMatchObject({
      outcome: 'failed',
      mm: 46,
      to: { cause: { is: 'right end' } },
    });
    expect(distances([{ at: 'edge', side: 'top', fromMm: 40 }])[0]).toMatchObject({
      outcome: 'failed',
      mm: 40,
      to: { cause: { is: 'top edge' } },
    });
  });

  it('asks for it between two bends, in whatever order they are given', () => {
    expect(distances([left(200), left(160)])[0]).toMatchObject({
      outcome: 'failed',
      mm: 40,
      to: { is: 'bend' },
    });
    expect(distances([left(200), left(150)])[0]).toMatchObject({ outcome: 'held' });
  });

  it('does not know the right end of a part without a length', () => {
    expect(distances([left(290)], { endless: true })[0]).toMatchObject({ outcome: 'held', mm: 290 });
  });

  it('has nothing to hold where no bend is placed', () => {
    expect(distances([])).toEqual([]);
  });
});
