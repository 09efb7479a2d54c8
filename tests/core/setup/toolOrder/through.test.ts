import { describe, expect, it } from 'vitest';
import { throughCosts, throughPath } from '../../../../src/core/setup/toolOrder/through.js';
import { refusal } from '../../../support/refusal.js';

// Places on a line: from one end to the other is the shortest way.
const places = [0, 3, 1, 7];
const change = places.map((from) => places.map((to) => Math.abs(from - to)));

describe('the way through all sets of a mark', () => {
  it('costs least from each first to each last one', () => {
    const costs = throughCosts([0, 1, 2, 3], change);
    expect(costs[0]?.[3]).toBe(7);
    // From 3 by 0 and 1, in either order, to 7: back three and forth seven.
    expect(costs[1]?.[3]).toBe(10);
    expect(costs[0]?.[0]).toBe(Infinity);
    expect(throughCosts([2], change)).toEqual([[0]]);
  });

  it('is found again from its cost', () => {
    expect(throughPath([0, 1, 2, 3], change, 0, 3)).toEqual([0, 2, 1, 3]);
    expect(throughPath([0, 1, 2, 3], change, 2, 3)).toEqual([2, 0, 1, 3]);
    expect(throughPath([2], change, 0, 0)).toEqual([2]);
  });

  it('is not looked for through more than twelve sets', () => {
    const sets = Array.from({ length: 13 }, (_, at) => at);
    expect(
      refusal(() =>
        throughCosts(
          sets,
          sets.map(() => sets.map(() => 1)),
        ),
      ),
    ).toMatchObject({ code: 'invalid' });
  });
});
