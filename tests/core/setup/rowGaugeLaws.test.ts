// Laws of the gauges of rows, over rows of a few sections, holes and ways to place them.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { rowGauge } from '../../../src/core/setup/rowGauge.js';
import { findPress } from '../../../src/core/shop/findPress.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith({
  'Fence greatest reach': 9,
  'Left stop greatest reach': 20,
  'Right stop greatest reach': 20,
});
const press = findPress('Bay A', 'Press', shop);

const group = fc.record({
  Hole: fc.constantFrom('13/16', '4 @ 13/16', '2 @ 15/16', '3 @ 11/16', '2 @ 13/16x1-1/8'),
  Bolt: fc.constantFrom('', '3/4', '5/8', 'none'),
  End: fc.constantFrom('', 2, 'right 3'),
  Edge: fc.constantFrom('', 1.5),
  Pitch: fc.constantFrom('', 3),
  Gage: fc.constantFrom('', 2.5),
  Leg: fc.constantFrom('', '', 'long'),
});
const row = fc.record({
  Section: fc.constantFrom('PL1/2X10', 'FB 1/2x6', 'L4X3X3/8', 'L4X4X1/4', 'C8X11.5'),
  Length: fc.constantFrom(12, 36, 120, ''),
  'Miter left': fc.constantFrom('', '', 30),
  first: group,
  second: fc.option(group, { nil: undefined }),
});

describe('the gauges of any row', () => {
  it('set each given hole once, as its place and its way round ask, and no other', () => {
    let set = 0;
    fc.assert(
      fc.property(row, ({ first, second, ...part }) => {
        const more = Object.entries(second ?? {}).map(([name, cell]) => [`${name} 2`, cell] as const);
        const cells: Record<string, CellValue> = {
          Grade: 'A36',
          ...part,
          ...first,
          ...Object.fromEntries(more),
        };
        const read = checkedPart(Object.values(cells), readHeadings(Object.keys(cells)), shop).part;
        const [layout] = read?.layouts.layouts ?? [];
        if (!read || !layout) return;
        const gauges = rowGauge({ row: read.row, layouts: read.layouts, press, shop, turns: 'flip' });
        const laid = new Map(
          layout.groups.flatMap(({ holes }) => holes.map((hole) => [`${hole.group} ${hole.index}`, hole])),
        );
        const told = gauges.flatMap(({ settings, marked, notGiven }) => [
          ...settings.flatMap(({ hits }) => hits),
          ...marked,
          ...notGiven,
        ]);
        if (layout.endless || layout.problem) expect(gauges).toEqual([]);
        else
          expect(told.map(({ group: of, index }) => `${of} ${index}`).sort()).toEqual(
            [...laid.keys()].sort(),
          );
        for (const { face, settings } of gauges) {
          const widthMm = layout.faces.find(({ id }) => id === face)?.widthMm ?? NaN;
          for (const { stopMm, fenceMm, hits } of settings) {
            for (const { group: of, index, end, edge, turn } of hits) {
              const hole = laid.get(`${of} ${index}`);
              expect(hole?.free).toBeUndefined();
              const { x = NaN, y = NaN } = hole?.center ?? {};
              expect(stopMm).toBeCloseTo(end === 'left' ? x : layout.lengthMm - x, 5);
              expect(fenceMm).toBeCloseTo(edge === 'top' ? widthMm - y : y, 5);
              if (face !== 'plate' || read.row.miterRad > 0) expect(turn).toBe('as it lies');
              expect(edge === 'heel').toBe(face !== 'plate' && face !== 'web');
              set++;
            }
          }
        }
      }),
      { numRuns: 150, seed: 7 },
    );
    expect(set).toBeGreaterThan(50);
  });
});
