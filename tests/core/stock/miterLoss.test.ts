import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cutting, Item } from '../../../src/core/stock/cutting.js';
import { barWalk } from '../../../src/core/stock/barWalk.js';
import { miterLoss } from '../../../src/core/stock/miterLoss.js';

type Faces = readonly [left: number, right: number];
const ways = {
  none: ([left, right]: Faces): Faces[] => [[left, right]],
  round: ([left, right]: Faces): Faces[] => [
    [left, right],
    [right, left],
  ],
  'over and round': ([left, right]: Faces): Faces[] => [
    [left, right],
    [right, left],
    [-left, -right],
    [-right, -left],
  ],
};

/** The least of every order and turning, by trying them all. */
function leastLoss(faces: readonly Faces[], turned: (faces: Faces) => Faces[], at = 0): number {
  if (faces.length === 0) return Math.abs(at);
  const tries = faces.flatMap((each, k) => {
    const others = faces.filter((_, other) => other !== k);
    return turned(each).map(([left, right]) => Math.abs(left - at) + leastLoss(others, turned, right));
  });
  return Math.min(...tries);
}

function cuttingOf(faces: readonly Faces[], turning: keyof typeof ways): Cutting {
  const items = faces.map(([left, right], part): Item => {
    const places = turning === 'over and round' ? [Math.abs(left), Math.abs(right)] : [left, right];
    if (turning !== 'none') places.sort((a, b) => a - b);
    const [from = 0, to = 0] = places;
    return { size: 100, left: from, right: to, demand: 1, parts: [{ part, pieces: 1 }] };
  });
  const isDirected = turning === 'none';
  return { items, stocks: [], isDirected, isSquare: false, costStep: 1, placeOf: () => 0 };
}

const places = fc.constantFrom(0, 0, 1, -1, 5, -5, 7, -7);
const patterns = fc.array(fc.tuple(places, places), { minLength: 1, maxLength: 4 });

for (const turning of ['over and round', 'round', 'none'] as const) {
  test(`the loss of miters turned ${turning} is the least of every order and turning`, () => {
    fc.assert(
      fc.property(patterns, (faces) => {
        const cutting = cuttingOf(faces, turning);
        const all = faces.map((_, item) => item);
        const loss = miterLoss(cutting, all, new Array<number>(faces.length).fill(1));
        expect(loss).toBe(leastLoss(faces, ways[turning]));
      }),
      { numRuns: 200 },
    );
  });

  test(`the walk of a bar with pieces turned ${turning} takes each once and loses no more`, () => {
    fc.assert(
      fc.property(patterns, (faces) => {
        const cutting = cuttingOf(faces, turning);
        const items = faces.map((_, item) => item);
        const pattern = { stock: 0, items, counts: items.map(() => 1) };
        const steps = barWalk(cutting, pattern);
        expect(steps.map(({ item }) => item).sort((a, b) => a - b)).toEqual(items);
        let at = 0;
        let lost = 0;
        for (const { item, isReversed } of steps) {
          const { left = 0, right = 0 } = cutting.items[item] ?? {};
          lost += Math.abs((isReversed ? right : left) - at);
          at = isReversed ? left : right;
        }
        expect(lost + Math.abs(at)).toBe(miterLoss(cutting, items, pattern.counts));
      }),
      { numRuns: 200 },
    );
  });
}
