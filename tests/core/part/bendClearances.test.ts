import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bendClearances, type HoleToBend } from '../../../src/core/part/bendClearances.js';
import type { BendLine, PlacedHole } from '../../../src/core/part/part.js';
import { libraryDistance } from '../../checks/part/libraryReferee.js';
import { holeAt } from '../../support/face.js';

const bend = { face: 'plate', from: { x: 100, y: 0 }, to: { x: 100, y: 100 }, insideRadiusMm: 6 } as const;

function toBend(hole: PlacedHole): HoleToBend[] {
  const found: HoleToBend[] = [];
  bendClearances({ holes: [hole], bends: [bend] }, (_hole, _bend, clearances) => found.push(clearances));
  return found;
}

describe('a hole and a bend line', () => {
  it('are as far apart as the rim and the center are from the line', () => {
    const [{ rim, center } = { rim: undefined, center: undefined }] = toBend(holeAt(130, 50));
    expect([rim?.least.distance, center?.least.distance]).toEqual([20, 30]);
    expect(rim?.least.at).toEqual([
      { x: 120, y: 50 },
      { x: 100, y: 50 },
    ]);
  });

  it('overlap where the line cuts the hole', () => {
    expect(toBend(holeAt(104, 50))[0]?.rim.least.distance).toBe(-6);
  });

  it('are a range where the hole is not placed', () => {
    const { rim, center } = toBend(holeAt(130, 50, { free: { x0: -15, x1: 40, y0: 0, y1: 0 } }))[0] ?? {};
    expect([rim?.least.distance, rim?.most]).toEqual([5, 60]);
    expect([center?.least.distance, center?.most]).toEqual([15, 70]);
  });

  it('are measured on one face only', () => {
    expect(toBend({ ...holeAt(130, 50), face: 'web' })).toEqual([]);
  });

  it('are visited each with each, and counted', () => {
    const holes = [holeAt(130, 50), { ...holeAt(130, 50), face: 'web' } as const, holeAt(20, 50)];
    const second: BendLine = { ...bend, from: { x: 0, y: 80 }, to: { x: 300, y: 80 } };
    const seen: [PlacedHole, BendLine][] = [];
    expect(
      bendClearances({ holes, bends: [bend, second] }, (...[hole, line]) => seen.push([hole, line])),
    ).toBe(4);
    expect(seen).toEqual([
      [holes[0], bend],
      [holes[2], bend],
      [holes[0], second],
      [holes[2], second],
    ]);
    expect(bendClearances({ holes, bends: [] }, () => undefined)).toBe(0);
  });

  it('have the distance of the center that a geometry library finds, to the ends of the line too', () => {
    const place = fc.record({ x: fc.integer({ min: -50, max: 350 }), y: fc.integer({ min: -50, max: 150 }) });
    fc.assert(
      fc.property(place, ({ x, y }) => {
        const referee = libraryDistance(
          [[x, y]],
          [
            [100, 0],
            [100, 100],
          ],
        );
        const [found] = toBend(holeAt(x, y));
        expect(found?.center.least.distance).toBeCloseTo(referee, 9);
        expect(found?.rim.least.distance).toBeCloseTo(referee - 10, 9);
      }),
    );
  });
});
