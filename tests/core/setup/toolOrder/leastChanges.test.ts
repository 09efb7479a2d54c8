import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastChanges } from '../../../../src/core/setup/toolOrder/leastChanges.js';
import { fewestByTrying } from './bruteForce.js';
import { marksOf } from './randomMarks.js';

const asked = process.env['TOOL_ORDERS'];
const runs = asked === undefined ? { numRuns: 300, seed: 4 } : { numRuns: Number(asked) };

/** The changes of tools of the best of all orders, where nothing else counts. */
function fewest(marks: readonly (readonly string[])[]): number {
  const sets = marks.map((own) => own.map((key) => ({ holder: '', punch: key, die: key })));
  return fewestByTrying(sets)[1];
}

describe('the number of changes that no order goes below', () => {
  it.each([
    ['no marks', [], 0],
    ['one tool for all', [['a'], ['a'], ['a']], 0],
    ['each its own tool', [['a'], ['b'], ['c']], 2],
    [
      'two marks that share one of two tools',
      [
        ['a', 'b'],
        ['b', 'c'],
      ],
      2,
    ],
    // The tool that all share joins two of them; each pair once, since a mark ends with another tool than it began with.
    [
      'three marks that share one of two tools',
      [
        ['a', 'b'],
        ['a', 'c'],
        ['a', 'd'],
      ],
      4,
    ],
    ['the same with a mark of that tool alone between two', [['a', 'b'], ['a'], ['a', 'd']], 2],
  ])('of %s', (_, marks, least) => {
    expect(leastChanges(marks)).toBe(least);
    expect(fewest(marks)).toBe(least);
  });

  it('is never above the best of all orders, and most often is it', () => {
    let met = 0;
    let tried = 0;
    fc.assert(
      fc.property(marksOf({ marks: 7, sets: 3 }, 1), (marks) => {
        const keys = marks.map((sets) => sets.map(({ punch, die }) => `${punch} ${die}`));
        const [least, best] = [leastChanges(keys.filter(({ length }) => length > 0)), fewest(keys)];
        expect(least).toBeLessThanOrEqual(best);
        tried += 1;
        met += Number(least === best);
      }),
      runs,
    );
    expect(met / tried).toBeGreaterThan(0.8);
  });

  it('holds for holders as well, of which a mark may take one up again', () => {
    fc.assert(
      fc.property(marksOf({ marks: 6, sets: 3 }, 1), (marks) => {
        const holders = marks.map((sets) => [...new Set(sets.map(({ holder }) => holder))]);
        expect(leastChanges(holders.filter(({ length }) => length > 0))).toBeLessThanOrEqual(
          fewestByTrying(marks)[0],
        );
      }),
      runs,
    );
  });
});
