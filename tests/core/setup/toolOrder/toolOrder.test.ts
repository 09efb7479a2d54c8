import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ToolSet } from '../../../../src/core/setup/toolOrder/changes.js';
import { type Ordered, toolOrder } from '../../../../src/core/setup/toolOrder/toolOrder.js';
import { processorMs } from '../../../support/processorMs.js';
import { countedBetween, fewestByTrying } from './bruteForce.js';
import { longJob, marksOf } from './randomMarks.js';

/** So many random lists are tried; `TOOL_ORDERS=20000` tries as many others. */
const asked = process.env['TOOL_ORDERS'];
const runs = asked === undefined ? { numRuns: 300, seed: 4 } : { numRuns: Number(asked) };
const set = (holder: string, punch: string, die: string): ToolSet => ({ holder, punch, die });
const [a, aWide, b, c] = [set('1', 'a', 'a'), set('1', 'a', 'wide'), set('1', 'b', 'b'), set('2', 'c', 'c')];

/** The changes along an order, counted without the code that made it. */
function countedAlong({ operations }: Ordered): [number, number, number] {
  const total: [number, number, number] = [0, 0, 0];
  operations.forEach(({ set: to }, at) => {
    countedBetween(operations[at - 1]?.set, to).forEach((each, index) => {
      total[index] = (total[index] ?? 0) + each;
    });
  });
  return total;
}

const keyOf = (mark: number, { punch, die }: ToolSet) => `${mark} ${punch} ${die}`;
const wanted = (marks: readonly (readonly ToolSet[])[]) =>
  marks.flatMap((sets, mark) => sets.map((each) => keyOf(mark, each))).sort();
const done = ({ operations }: Ordered) => operations.map((each) => keyOf(each.mark, each.set)).sort();

describe('the order of marks by their tools', () => {
  it.each([
    { marks: 8, sets: 1 },
    { marks: 8, sets: 2 },
    { marks: 6, sets: 3 },
  ])('has the fewest changes of all orders, tried one by one, for lists of up to %o', (most) => {
    fc.assert(
      fc.property(marksOf(most), (marks) => {
        const { byMark } = toolOrder(marks);
        const fewest = fewestByTrying(marks);
        expect(countedAlong(byMark)).toEqual(fewest);
        expect(byMark.changes).toEqual({ holders: fewest[0], tools: fewest[1] });
        expect(byMark.least).toEqual(byMark.changes);
      }),
      runs,
    );
  });

  it('has them too where all marks of a set are worked before it is changed', () => {
    fc.assert(
      fc.property(marksOf({ marks: 8, sets: 3 }), (marks) => {
        const { byTool } = toolOrder(marks);
        const different = new Map(marks.flat().map((each) => [keyOf(0, each), each]));
        fc.pre(different.size <= 8);
        expect(countedAlong(byTool)).toEqual(fewestByTrying([...different.values()].map((each) => [each])));
      }),
      runs,
    );
  });

  it('does every operation of every mark once, and finishes a mark before the next', () => {
    fc.assert(
      fc.property(marksOf({ marks: 30, sets: 4 }), (marks) => {
        const { byMark, byTool } = toolOrder(marks);
        for (const order of [byMark, byTool]) {
          expect(done(order)).toEqual(wanted(marks));
          const [holders, tools] = countedAlong(order);
          expect(order.changes).toEqual({ holders, tools });
          expect(order.operations.at(-1)?.soFar ?? order.changes).toEqual(order.changes);
        }
        const turns = byMark.operations.filter(({ mark }, at) => mark !== byMark.operations[at - 1]?.mark);
        expect(new Set(turns.map(({ mark }) => mark)).size).toBe(turns.length);
      }),
      { numRuns: 200 },
    );
  });

  it('never has fewer changes than its bound, nor finishing each mark fewer than working by tool', () => {
    fc.assert(
      fc.property(marksOf({ marks: 40, sets: 4 }, 15), (marks) => {
        const { byMark, byTool } = toolOrder(marks);
        for (const { changes, least } of [byMark, byTool]) {
          expect(changes.holders).toBeGreaterThanOrEqual(least.holders);
          expect(changes.tools).toBeGreaterThanOrEqual(least.tools);
        }
        expect(byTool.changes).toEqual(byTool.least);
        expect(byMark.changes.holders).toBeGreaterThanOrEqual(byTool.changes.holders);
        expect(byMark.changes.tools).toBeGreaterThanOrEqual(byTool.changes.tools);
      }),
      { numRuns: 200 },
    );
  });

  it('changes holders least, then tools, then single pieces', () => {
    // The die alone first: the punch that both sets share stays in.
    expect(toolOrder([[a], [b], [aWide]]).byMark.operations.map(({ mark }) => mark)).toEqual([0, 2, 1]);
    const { byMark } = toolOrder([[a], [c], [b], [c], [a]]);
    expect(byMark.changes).toEqual({ holders: 1, tools: 2 });
    expect(byMark.operations.map(({ soFar }) => soFar.tools)).toEqual([0, 0, 1, 2, 2]);
  });

  it('counts a change of the die alone', () => {
    expect(toolOrder([[a], [aWide]]).byMark.changes).toEqual({ holders: 0, tools: 1 });
  });

  it('names the way of working with fewer changes, finishing each mark where both have as few', () => {
    const several = toolOrder([
      [a, c],
      [a, c],
      [a, b, c],
    ]);
    expect(several.byMark.changes).toEqual({ holders: 3, tools: 4 });
    expect(several.byTool.changes).toEqual({ holders: 1, tools: 2 });
    expect(several.better).toBe('tool');
    expect(
      toolOrder([
        [a, b],
        [b, c],
      ]).better,
    ).toBe('mark');
  });

  it('of marks that need no tools has no operations and no changes', () => {
    for (const marks of [[], [[]], [[], []]]) {
      expect(toolOrder(marks).byMark).toEqual({
        operations: [],
        changes: { holders: 0, tools: 0 },
        least: { holders: 0, tools: 0 },
      });
    }
  });

  it.each([
    [1, 40],
    [3, 40],
    [9, 90],
  ])(
    'of 500 marks of up to %d sets takes under 2 s of processor time, and tells its gap',
    async (sets, punches) => {
      const marks = longJob(500, sets, punches);
      let order: Ordered | undefined;
      expect(await processorMs(() => (order = toolOrder(marks).byMark))).toBeLessThan(2000);
      expect(done(order as Ordered)).toEqual(wanted(marks));
      const { changes, least } = order as Ordered;
      expect(changes.holders).toBeGreaterThanOrEqual(least.holders);
      expect(changes.tools - least.tools).toBeGreaterThanOrEqual(0);
      expect(changes.tools - least.tools).toBeLessThan(0.05 * least.tools + 1);
    },
  );

  it('gives the same order at every call', () => {
    const marks = longJob(60, 3, 20);
    expect(toolOrder(marks)).toEqual(toolOrder(marks));
  });
});
