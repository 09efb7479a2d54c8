import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOf, taskOf } from '../../../../src/core/setup/toolOrder/batches.js';
import { exactOrder } from '../../../../src/core/setup/toolOrder/exactOrder.js';
import { quickOrder } from '../../../../src/core/setup/toolOrder/quickOrder.js';
import { marksOf } from './randomMarks.js';

describe('the quick order of batches', () => {
  it('visits each once, costs no less than the best of all, and most often as little', () => {
    let met = 0;
    let tried = 0;
    fc.assert(
      fc.property(marksOf({ marks: 12, sets: 3 }, 4), (marks) => {
        const task = taskOf(marks);
        const [quick, best] = [quickOrder(task), exactOrder(task)];
        for (const visits of [quick, best]) {
          expect(visits.map(({ batch }) => batch).sort((a, b) => a - b)).toEqual([...task.batches.keys()]);
        }
        const [cost, least] = [costOf(task, quick), costOf(task, best)];
        expect(cost).toBeGreaterThanOrEqual(least);
        tried += 1;
        met += Number(cost === least);
      }),
      { numRuns: 300 },
    );
    expect(met / tried).toBeGreaterThan(0.5);
  });
});
