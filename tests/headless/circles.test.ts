// What is walked again after a result outgrew its place, where formulas read each other in a circle.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dueNodes } from '../../src/headless/recalculate/calculation.js';
import { calculationOrder } from '../../src/headless/recalculate/calculationOrder.js';

/** The nodes that hang on node 0, by a walk from each to what it reads. */
function hangingOn0(reads: readonly number[][]): number[] {
  const known = new Set<number>();
  for (let more = true; more; ) {
    const before = known.size;
    reads.forEach((each, node) => {
      if (each.some((read) => read === 0 || known.has(read))) known.add(node);
    });
    more = known.size > before;
  }
  return [...known].sort((a, b) => a - b);
}

function due(reads: number[][]): number[] {
  const cells = reads.map(() => ({ formula: { dynamic: false } }));
  const before = { outgrown: new Set([0]), anythingChanged: false };
  const flags = dueNodes(
    { graph: { reads }, order: calculationOrder(reads), cells, anythingChanged: false },
    before,
  );
  return [...flags].flatMap((flag, node) => (flag === 1 ? [node] : []));
}

describe('what is walked again', () => {
  it('is all that hangs on the result, in circles too', () => {
    const graphs = fc
      .integer({ min: 1, max: 12 })
      .chain((count) =>
        fc.array(fc.uniqueArray(fc.nat(count - 1), { maxLength: 3 }), { minLength: count, maxLength: count }),
      );
    fc.assert(
      fc.property(graphs, (reads) => {
        expect(due(reads)).toEqual(hangingOn0(reads));
      }),
      { numRuns: 1000 },
    );
  });

  it('is found by one look at each formula of a long circle', () => {
    const count = 20_000;
    let looks = 0;
    class Counted extends Array<number> {
      override some(...args: Parameters<number[]['some']>): boolean {
        looks++;
        return super.some(...args);
      }
    }
    // Each reads the next, and the last the first and the result.
    const reads = Array.from({ length: count }, (_, node) =>
      Counted.from(node === 0 ? [] : node === count - 1 ? [1, 0] : [node + 1]),
    );
    expect(due(reads)).toHaveLength(count - 1);
    expect(looks).toBeLessThanOrEqual(2 * count);
  });
});
