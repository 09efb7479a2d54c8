// A plate of 300 × 100 mm with a clip of 60 × 60 mm at its upper right and a notch of 60 × 40 mm in its bottom edge.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clearance } from '../../../src/core/part/clearance.js';
import { edgeClearance, edgeClearanceRange } from '../../../src/core/part/edgeClearance.js';
import { freedomOf } from '../../../src/core/part/freedom.js';
import { type Box, type Shape, translate } from '../../../src/core/part/shape.js';
import { voidsOf } from '../../../src/core/part/void.js';
import { outlineFor } from '../../support/face.js';
import { anyFreedom, anyShape } from '../../support/randomShape.js';

const place = { at: 'edge', side: 'bottom', centerMm: 150 } as const;
const outline = outlineFor({
  clips: [{ end: 'right', side: 'top', alongMm: 60, acrossMm: 60, kind: 'sheared' }],
  notches: [{ shape: 'rectangle', place, widthMm: 60, depthMm: 40, kind: 'sheared' }],
});
const pairs = voidsOf(outline).flatMap((around) => around.edges.map((edge) => ({ around, edge })));
const segmentOf = ({ from, to }: (typeof pairs)[number]['edge']) => ({ core: [from, to], radius: 0 });
const round = (x: number, y: number, radius = 10): Shape => ({ core: [{ x, y }], radius });

/** Near the clip, or at the notch. */
const nearCuts = fc
  .tuple(anyShape, fc.constantFrom([270, 70], [150, 20]))
  .map(([shape, [x = 0, y = 0]]) => translate(shape, x, y));

/** Places along the boundary of a freedom, `steps` to a side. */
function placesAround({ x0, x1, y0, y1 }: Box, steps: number): { x: number; y: number }[] {
  return Array.from({ length: steps + 1 }, (_, step) => step / steps).flatMap((share) => {
    const [x, y] = [x0 + share * (x1 - x0), y0 + share * (y1 - y0)];
    return [
      { x, y: y0 },
      { x, y: y1 },
      { x: x0, y },
      { x: x1, y },
    ];
  });
}

describe('the clearance from one edge', () => {
  it('is minus the way out of what the edge bounds, or the distance from the edge itself', () => {
    const of = (is: string, shape: Shape) =>
      pairs
        .filter(({ edge }) => edge.cause.is === is)
        .map(({ edge, around }) => edgeClearance(shape, edge, around).distance);
    expect(of('right end', round(295, 20))).toEqual([-5]);
    expect(of('right end', round(280, 20))).toEqual([10]);
    // Beside the end: to its upper corner at 40.
    expect(of('right end', round(260, 70))[0]).toBeCloseTo(50 - 10, 9);
    expect(of('notch', round(150, 45))).toEqual([-5, -5, -5]);
    expect(of('notch', round(150, 55))[1]).toBe(5);
    expect(of('notch', round(150, 55))[0]).toBeCloseTo(Math.hypot(30, 15) - 10, 9);
  });

  it.each([
    ['bottom edge', 60, 50, 1],
    ['right end', 200, 20, 1],
    ['top edge', 100, 50, 1],
    ['left end', 100, 50, 1],
    ['clip', 200, 0, 1],
    ['right end', 260, 70, 2],
    ['top edge', 280, 50, 2],
  ])('from the %s of a hole at %d, %d looks at its core so often: %d', (is, x, y, expected) => {
    // In front of an edge its line tells the distance: there is no need to look for the nearest place.
    let reads = 0;
    const shape: Shape = {
      radius: 10,
      get core() {
        reads++;
        return [{ x, y }];
      },
    };
    const [pair] = pairs.filter(({ edge }) => edge.cause.is === is);
    if (!pair) throw new Error('There is no such edge.');
    edgeClearance(shape, pair.edge, pair.around);
    expect(reads).toBe(expected);
  });

  it('of a shape that touches the line is 0 at the edge, and its distance beyond its ends', () => {
    const [end] = pairs.filter(({ edge }) => edge.cause.is === 'right end');
    if (!end) throw new Error('A plate has an end.');
    for (const reachMm of [0, 5e-7]) {
      const at = (y: number) => edgeClearance(round(290 + reachMm, y), end.edge, end.around).distance;
      expect(at(20)).toBeCloseTo(-reachMm, 12);
      expect(at(80)).toBeCloseTo(Math.hypot(10 - reachMm, 40) - 10, 9);
    }
  });
});

describe('the range of the clearance from one edge', () => {
  const steps = 200;

  it('ends where some place of the freedom has it, at a single edge', () => {
    fc.assert(
      fc.property(nearCuts, anyFreedom, (shape, free) => {
        const freedom = freedomOf(shape, free);
        const places = placesAround(free, steps).map(({ x, y }) => translate(shape, x, y));
        const stepMm = Math.max(free.x1 - free.x0, free.y1 - free.y0) / steps;
        for (const { edge, around } of pairs) {
          if (around.notch) continue;
          const { least, most } = edgeClearanceRange(freedom, edge, around);
          const seen = places.map((each) => edgeClearance(each, edge, around).distance);
          expect(Math.max(...seen)).toBeLessThanOrEqual(most + 1e-6);
          expect(Math.max(...seen)).toBeGreaterThanOrEqual(most - stepMm - 1e-5);
          expect(least.distance).toBeLessThanOrEqual(Math.min(...seen) + 1e-6);
          expect(least).toEqual(edgeClearance(freedom.swept, edge, around));
        }
      }),
      { numRuns: 60 },
    );
  });

  it('of a shape that touches the line wherever it may lie ends where it is farthest from the edge', () => {
    const [end] = pairs.filter(({ edge }) => edge.cause.is === 'right end');
    if (!end) throw new Error('A plate has an end.');
    const beside = freedomOf(round(290, 60), { x0: 0, x1: 0, y0: 0, y1: 30 });
    expect(edgeClearanceRange(beside, end.edge, end.around).most).toBeCloseTo(Math.hypot(10, 50) - 10, 9);
  });

  it('ends at a notch no farther off than an outermost place, and below 0 where no place is clear', () => {
    fc.assert(
      fc.property(nearCuts, anyFreedom, (shape, free) => {
        const freedom = freedomOf(shape, free);
        for (const { edge, around } of pairs) {
          if (!around.notch) continue;
          const { most } = edgeClearanceRange(freedom, edge, around);
          const outermost = freedom.outermost.map((each) => ({
            signed: edgeClearance(each.shape, edge, around).distance,
            plain: clearance(each.shape, segmentOf(edge)).distance,
          }));
          const within = outermost.every(({ signed }) => signed < 0);
          const farthest = Math.max(...outermost.map(({ signed, plain }) => (within ? signed : plain)));
          expect(most).toBeCloseTo(farthest, 9);
        }
      }),
    );
  });
});
