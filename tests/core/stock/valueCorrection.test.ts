import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shortOf, type Packing } from '../../../src/core/stock/cutting.js';
import { correctValues } from '../../../src/core/stock/valueCorrection.js';
import { countWork } from '../../../src/core/stock/work.js';
import { cuttingOf, dot, smallCuttings } from './support.js';

const uncounted = countWork(() => false, Infinity);

describe('Sequential value correction', () => {
  test('gives a plan each round that cuts everything and overfills no bar', () => {
    fc.assert(
      fc.property(smallCuttings, (cutting) => {
        const packings: Packing[] = [];
        correctValues(cutting, 4, (packing) => packings.push(packing) === 9, uncounted);
        expect(packings).toHaveLength(4);
        for (const packing of packings) {
          expect(shortOf(cutting, packing)).toBe(0);
          for (const { pattern } of packing.runs) {
            const sizes = pattern.items.map((item) => cutting.items[item]?.size ?? NaN);
            expect(dot(pattern.counts, sizes)).toBeLessThanOrEqual(
              cutting.stocks[pattern.stock]?.capacity ?? 0,
            );
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  test('ends when it is told to', () => {
    let rounds = 0;
    correctValues(
      cuttingOf({ sizes: [50, 30], demands: [3, 3], capacities: [100] }),
      30,
      () => ++rounds === 2,
      uncounted,
    );
    expect(rounds).toBe(2);
  });

  test('finds the full bars that first-fit decreasing misses', () => {
    // 4 × (44 + 24 + 32) fill four bars; the largest first put two of 44 into one.
    const cutting = cuttingOf({ sizes: [44, 32, 24], demands: [4, 4, 4], capacities: [100] });
    const bars: number[] = [];
    const onPacking = ({ runs }: Packing) => {
      bars.push(runs.reduce((sum, run) => sum + run.bars, 0));
      return false;
    };
    correctValues(cutting, 30, onPacking, uncounted);
    expect(Math.min(...bars)).toBe(4);
  });
});
