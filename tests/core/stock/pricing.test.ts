import fc from 'fast-check';
import { expect, test } from 'vitest';
import { price } from '../../../src/core/stock/pricing.js';
import { countWork } from '../../../src/core/stock/work.js';
import { dot, everyFill, smallCuttings } from './support.js';

const values = fc.array(fc.integer({ min: 0, max: 50 }), { minLength: 5, maxLength: 5 });

test('no pattern is worth more than pricing says, its patterns beat their bar, and none is missed', () => {
  fc.assert(
    fc.property(smallCuttings, values, fc.integer({ min: 5, max: 20 }), (cutting, worth, scale) => {
      const pieces = Float64Array.from(cutting.items, (_, item) => worth[item] as number);
      const wanted = cutting.items.map(({ demand }) => demand);
      const prices = { pieces, bars: new Float64Array(cutting.stocks.length), scale };
      const { most, patterns } = price(
        cutting,
        prices,
        wanted,
        [1, 1],
        countWork(() => false, Infinity),
      );
      cutting.stocks.forEach(({ capacity, cost }, at) => {
        const fits = (fill: number[]) =>
          dot(
            fill,
            cutting.items.map(({ size }) => size),
          ) <= capacity;
        const best = Math.max(
          ...everyFill(cutting)
            .filter(fits)
            .map((fill) => dot(fill, pieces)),
        );
        const own = patterns.filter(({ stock }) => stock === at);
        expect(most[at]).toBe(Math.max(best, cost * scale));
        expect(own.length > 0).toBe(best > cost * scale);
        for (const { items, counts } of own)
          expect(
            dot(
              [...counts],
              items.map((item) => pieces[item] as number),
            ),
          ).toBeGreaterThan(cost * scale);
      });
    }),
    { numRuns: 200 },
  );
});
