import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeClearances, type HoleToEdge } from '../../../src/core/part/edgeClearances.js';
import { overhangMm } from '../../../src/core/part/inside.js';
import { holeShape } from '../../../src/core/part/holeShape.js';
import type { Edge } from '../../../src/core/part/outline.js';
import { outlineOf } from '../../../src/core/part/outlineOf.js';
import type { Face, PlacedHole } from '../../../src/core/part/part.js';
import { toleranceMm } from '../../../src/core/part/tolerance.js';
import { clearOfLine } from '../../../src/core/part/void.js';
import { Random } from '../../checks/part/random.js';
import { randomPart } from '../../checks/part/randomPart.js';
import { holeAt, outlineFor, plateFace } from '../../support/face.js';
import { anyFreedom, anyShares, placeIn } from '../../support/randomShape.js';

const bottomNotch = {
  notches: [
    {
      shape: 'rectangle',
      place: { at: 'edge', side: 'bottom', centerMm: 150 },
      widthMm: 60,
      depthMm: 40,
      kind: 'sheared',
    },
  ],
} as const;
const clipped = {
  clips: [{ end: 'right', side: 'top', alongMm: 60, acrossMm: 60, kind: 'sheared' }],
} as const;

function measured(face: Face, hole: PlacedHole): [string, HoleToEdge][] {
  const found: [string, HoleToEdge][] = [];
  edgeClearances(face, [hole], (_hole, { cause }, clearances) => found.push([cause.is, clearances]));
  return found;
}

const rims = (face: Face, hole: PlacedHole) =>
  measured(face, hole).map(([cause, { rim }]) => [cause, Math.round(rim.least.distance * 1e6) / 1e6]);

describe('a hole and the edges of its face', () => {
  it('has its distance from every edge, far edges too', () => {
    expect(rims(plateFace(), holeAt(40, 88))).toEqual([
      ['bottom edge', 78],
      ['right end', 250],
      ['top edge', 2],
      ['left end', 30],
    ]);
  });

  it('has its overhang beyond the line of an edge, below 0', () => {
    expect(rims(plateFace(), holeAt(40, 95))).toEqual([
      ['bottom edge', 85],
      ['right end', 250],
      ['top edge', -5],
      ['left end', 30],
    ]);
    expect(rims(plateFace(), holeAt(-50, 50))[3]).toEqual(['left end', -60]);
  });

  it('is measured from its rim, from its center, and from the centers of the end radii of a slot', () => {
    const slot = holeAt(40, 50, { hole: { shape: 'slot', widthMm: 20, lengthMm: 50 } });
    const { rim, center, endRadius } = measured(plateFace(), slot)[3]?.[1] as HoleToEdge;
    expect([rim, center, endRadius].map(({ least }) => least.distance)).toEqual([15, 40, 25]);
    expect(rim.least.at).toEqual([
      { x: 15, y: 50 },
      { x: 0, y: 50 },
    ]);
    const round = measured(plateFace(), holeAt(40, 50))[3]?.[1] as HoleToEdge;
    expect(round.endRadius).toBe(round.center);
    const square = measured(plateFace(), holeAt(40, 50, { hole: { shape: 'square', sideMm: 20 } }))[3]?.[1];
    expect(square?.endRadius).toBe(square?.center);
  });

  it('is measured to the edge itself, not to its line', () => {
    expect(rims(plateFace(clipped), holeAt(50, 70)).find(([cause]) => cause === 'clip')).toEqual([
      'clip',
      Math.round((Math.hypot(190, 30) - 10) * 1e6) / 1e6,
    ]);
  });

  it('is negative at every edge of a notch it reaches into, by the least move out of it, never through its mouth', () => {
    const notch = (hole: PlacedHole) =>
      rims(plateFace(bottomNotch), hole)
        .filter(([cause]) => cause === 'notch')
        .map(([, rim]) => rim);
    expect(notch(holeAt(150, 45))).toEqual([-5, -5, -5]);
    expect(notch(holeAt(125, 2))).toEqual([-15, -15, -15]);
    expect(notch(holeAt(150, 60))).toEqual([
      Math.round((Math.hypot(30, 20) - 10) * 1e6) / 1e6,
      10,
      Math.round((Math.hypot(30, 20) - 10) * 1e6) / 1e6,
    ]);
  });

  it('is negative in a flat vee too, however far off the part it lies', () => {
    const vee = {
      shape: 'vee',
      place: { at: 'edge', side: 'bottom', centerMm: 150 },
      widthMm: 290,
      depthMm: 0.001,
      kind: 'sheared',
    } as const;
    const [, clearances] =
      measured(plateFace({ notches: [vee] }), holeAt(150, -40)).find(([cause]) => cause === 'notch') ?? [];
    expect(clearances?.rim.least.distance).toBeCloseTo(-50, 2);
  });

  it('is at best as far as where it runs into the line of an edge', () => {
    // The clip falls by 1 in 30 from x = 240; the hole of 2 mm meets its line 5 mm below at x = 360, 60 mm beyond its end.
    const flat = plateFace({
      clips: [{ end: 'right', side: 'top', alongMm: 60, acrossMm: 2, kind: 'sheared' }],
    });
    const hole = holeAt(250, 95, {
      hole: { shape: 'round', diameterMm: 2 },
      free: { x0: 0, x1: 300, y0: 0, y1: 0 },
    });
    const [, clearances] = measured(flat, hole).find(([cause]) => cause === 'clip') ?? [];
    const meetsAt = 240 + 30 * (5 - Math.sqrt(1 + 1 / 900));
    expect(clearances?.rim.most).toBeCloseTo(Math.hypot(meetsAt - 300, 3) - 1, 4);
    expect(clearances?.rim.least.distance).toBeLessThan(0);
  });

  it('counts every hole of the face with every edge, and leaves holes of other faces out', () => {
    const other = { ...holeAt(40, 50), face: 'web' } as const;
    expect(
      edgeClearances(plateFace(bottomNotch), [holeAt(40, 50), other, holeAt(80, 50)], () => undefined),
    ).toBe(16);
  });

  it('touches an edge at 0', () => {
    expect(rims(plateFace(), holeAt(40, 90))[2]).toEqual(['top edge', 0]);
    expect(overhangMm(outlineFor(), holeAt(40, 90).shape)).toBe(0);
    expect(overhangMm(outlineFor(), holeAt(40, 92).shape)).toBe(2);
  });

  it('has a boundary that counts as inside', () => {
    const outline = outlineFor(bottomNotch);
    const inside = ([x, y]: [number, number]) =>
      overhangMm(outline, { core: [{ x, y }], radius: 0 }) <= toleranceMm;
    expect(
      (
        [
          [0, 0],
          [300, 50],
          [150, 40],
          [120, 20],
          [150, 40 - 1e-7],
          [150, 70],
        ] as [number, number][]
      ).every(inside),
    ).toBe(true);
    expect(
      (
        [
          [-0.01, 0],
          [150, 39],
          [150, -5],
          [121, 20],
          [400, 50],
        ] as [number, number][]
      ).some(inside),
    ).toBe(false);
  });
});

describe('properties of random parts', () => {
  const anyFace = fc.integer().map((seed) => {
    const { faces, holes } = randomPart(new Random(seed));
    return faces.flatMap(({ id, input }) => {
      const outline = outlineOf(input);
      const own = holes.filter((hole) => hole.face === id);
      return 'problem' in outline
        ? []
        : [{ face: { id, widthMm: input.widthMm, thicknessMm: 8, outline }, own }];
    });
  });

  it('hold the clearance of every place of a hole that is not placed', () => {
    fc.assert(
      fc.property(
        anyFace,
        anyFreedom,
        fc.array(anyShares, { minLength: 6, maxLength: 6 }),
        (faces, free, shares) => {
          for (const { face, own } of faces) {
            for (const { center, hole, direction, group, index } of own) {
              const at = (x: number, y: number): PlacedHole => ({
                face: face.id,
                group,
                index,
                center: { x, y },
                shape: holeShape(hole, { x, y }, direction),
              });
              const ranges = measured(face, { ...at(center.x, center.y), free });
              const places = shares.map((share) => placeIn(free, share));
              for (const { x, y } of places) {
                for (const [edge, clearances] of measured(face, at(center.x + x, center.y + y)).entries()) {
                  holdsAll(ranges[edge]?.[1] as HoleToEdge, clearances[1]);
                }
              }
            }
          }
        },
      ),
    );
  });

  it('never give more clearance nearer an edge', () => {
    fc.assert(
      fc.property(anyFace, fc.double({ min: 0.01, max: 40, noNaN: true }), (faces, stepMm) => {
        for (const { face, own } of faces) {
          for (const { center, hole, direction } of own) {
            for (const [at, edge] of face.outline.edges.entries()) {
              const rim = (x: number, y: number) => {
                const placed: PlacedHole = {
                  face: face.id,
                  group: 0,
                  index: 0,
                  center: { x, y },
                  shape: holeShape(hole, { x, y }, direction),
                };
                return {
                  rim: measured(face, placed)[at]?.[1].rim.least.distance ?? NaN,
                  inFront: clearOfLine(edge, placed.shape).distance,
                };
              };
              const { x, y } = outward(edge);
              const [before, after] = [
                rim(center.x, center.y),
                rim(center.x + x * stepMm, center.y + y * stepMm),
              ];
              // In a notch a hole may come out again on its other side.
              if (edge.cause.is === 'notch' && after.inFront < 0) continue;
              expect(after.rim).toBeLessThanOrEqual(before.rim + toleranceMm);
            }
          }
        }
      }),
    );
  });
});

function outward({ from, to }: Edge): { x: number; y: number } {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return { x: (to.y - from.y) / length, y: (from.x - to.x) / length };
}

function holdsAll(ranges: HoleToEdge, placed: HoleToEdge): void {
  for (const measure of ['rim', 'center', 'endRadius'] as const) {
    const { distance } = placed[measure].least;
    expect(ranges[measure].least.distance).toBeLessThanOrEqual(distance + toleranceMm);
    expect(ranges[measure].most).toBeGreaterThanOrEqual(distance - toleranceMm);
  }
}
