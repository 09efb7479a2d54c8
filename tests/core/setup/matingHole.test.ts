import { describe, expect, it } from 'vitest';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { readRow } from '../../../src/core/row/readRow.js';
import { matingOf } from '../../../src/core/setup/matingHole.js';
import { settingTable, shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const metric = shopWith({}, { settings: settingTable({ Units: 'mm', 'Edge code': 'EN' }) });

function mating(hole: string, bolt: string, lengthFt = 10, inShop = shop) {
  const { groups } = readRow(['PL1/2"X10"', hole, bolt], readHeadings(['Section', 'Hole', 'Bolt']), inShop);
  const [group] = groups;
  if (!group) throw new Error('no hole was read');
  return matingOf(group, lengthFt * 304.8, inShop);
}

describe('holes are bound to each other', () => {
  it.each([
    // 1/16 in of clearance is the tolerance of the length.
    ['13/16', '3/4', 'either end'],
    ['25/32', '3/4', 'one end'],
    // 1/8 in is length and width together.
    ['7/8', '3/4', undefined],
    ['27/32', '3/4', 'either end'],
    // Across a long slot the clearance is that of its width.
    ['13/16x1-7/8', '3/4', 'either end'],
    ['1-5/16', '3/4', undefined],
    ['13/16', 'none', undefined],
  ] as const)('%s for bolt %s: %s', (hole, bolt, bound) => {
    expect(mating(hole, bolt)).toBe(bound);
  });

  it('where the bolt is read from the hole, too, and not where none is known', () => {
    expect(mating('13/16', '')).toBe('either end');
    expect(mating('1.03', '')).toBeUndefined();
  });

  it('more tightly in a part over 30 ft', () => {
    expect(mating('13/16', '3/4', 30)).toBe('either end');
    expect(mating('13/16', '3/4', 30.1)).toBe('one end');
    expect(mating('7/8', '3/4', 30.1)).toBe('either end');
  });

  it('in millimeters alike: 2 mm for M20', () => {
    expect(mating('22', 'M20', 10, metric)).toBe('either end');
    expect(mating('24', 'M20', 10, metric)).toBeUndefined();
  });
});
