import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Cutting, Packing } from '../../../src/core/stock/cutting.js';
import { bestFit } from '../../../src/core/stock/fitDecreasing.js';
import { keepDrops } from '../../../src/core/stock/keepDrops.js';
import { takenBy } from '../../../src/core/stock/patterns.js';
import { restOfRoom, wholeUnits } from '../../../src/core/stock/wholeUnits.js';
import { smallProblems, squareProblem } from './support.js';

type RestOf = ReturnType<typeof restOfRoom>;

const roomOf = (cutting: Cutting, { pattern }: Packing['runs'][number]) =>
  (cutting.stocks[pattern.stock]?.capacity ?? 0) - takenBy(cutting, pattern.items, pattern.counts);

function keptOf(cutting: Cutting, packing: Packing, restOf: RestOf): { mm: number; drops: number } {
  const kept = { mm: 0, drops: 0 };
  for (const run of packing.runs) {
    const { rest, isKept } = restOf(roomOf(cutting, run), run.pattern.stock);
    if (!isKept) continue;
    kept.mm += rest * run.bars;
    kept.drops += run.bars;
  }
  return kept;
}

function barsOf(cutting: Cutting, packing: Packing): number[] {
  return cutting.stocks.map((_, at) =>
    packing.runs.reduce((sum, { pattern, bars }) => sum + (pattern.stock === at ? bars : 0), 0),
  );
}

function piecesOf(cutting: Cutting, packing: Packing): number[] {
  const counts = cutting.items.map(() => 0);
  for (const { pattern, bars } of packing.runs)
    pattern.items.forEach((item, k) => {
      counts[item] = (counts[item] ?? NaN) + bars * (pattern.counts[k] ?? NaN);
    });
  return counts;
}

describe('Drops of the same bars', () => {
  test('two short rests become one drop', () => {
    // 600 + 250 leaves 150 and 600 + 150 leaves 250: both are scrap.
    const problem = { ...squareProblem({ 600: 2, 250: 2, 150: 1 }, [{ lengthMm: 1000 }]), keepMm: 300 };
    const cutting = wholeUnits(problem);
    const pattern = (items: number[]) => ({ stock: 0, items, counts: items.map(() => 1) });
    const packing: Packing = {
      runs: [
        { pattern: pattern([0, 1]), bars: 1 },
        { pattern: pattern([0, 2]), bars: 1 },
        { pattern: pattern([1]), bars: 1 },
      ],
      short: [0, 0, 0],
    };
    const restOf = restOfRoom(problem);
    expect(keptOf(cutting, packing, restOf).mm).toBe(750);
    // Of three bars 1150 is left: 600, 250 and 150 fill one.
    const kept = keptOf(cutting, keepDrops(cutting, packing, restOf), restOf);
    expect(kept).toEqual({ mm: 1150, drops: 2 });
  });

  test('the purchase and the pieces stay, the kept length never falls', () => {
    fc.assert(
      fc.property(smallProblems(), (problem) => {
        const cutting = wholeUnits(problem);
        const restOf = restOfRoom(problem);
        for (const packing of bestFit(cutting)) {
          const other = keepDrops(cutting, packing, restOf);
          expect(barsOf(cutting, other)).toEqual(barsOf(cutting, packing));
          expect(piecesOf(cutting, other)).toEqual(piecesOf(cutting, packing));
          for (const run of other.runs) expect(roomOf(cutting, run)).toBeGreaterThanOrEqual(0);
          const [before, after] = [packing, other].map((each) => keptOf(cutting, each, restOf));
          expect(after?.mm).toBeGreaterThanOrEqual((before?.mm ?? 0) - 1e-6);
        }
      }),
      { numRuns: 300 },
    );
  });
});
