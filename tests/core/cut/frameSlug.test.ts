import { describe, expect, it } from 'vitest';
import { frameSlug } from '../../../src/core/cut/frameSlug.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { bayA, type PressCells, pressTable } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const shopOf = (...each: PressCells[]) => {
  const named = each.map((cells, at): [string, PressCells] => [`Bay ${at + 1}`, { ...bayA, ...cells }]);
  return readShop({ presses: pressTable(Object.fromEntries(named)) });
};
const loses = (slug: string | null, leg = 'both'): PressCells => ({
  'Angle shear slug': slug,
  'Angle shear leg position': leg,
});
const inch = 25.4;

describe('the slug of a frame of angles', () => {
  it.each([
    ['one press', [loses('3/8')], { mm: 0.375 * inch }],
    ['a single blade', [loses('none')], { mm: 0 }],
    ['two that lose the same', [loses('3/8'), loses('3/8')], { mm: 0.375 * inch }],
    ['two that do not', [loses('3/8'), loses('none')], { unknown: 'differs' }],
    ['one that does not say', [loses('3/8'), loses(null)], { unknown: 'blank' }],
    [
      'one that makes both hands, beside one that does not',
      [loses('3/8'), loses(null, 'up')],
      { mm: 0.375 * inch },
    ],
    ['one of which the hands are not known', [loses('3/8', '')], { mm: 0.375 * inch }],
    ['no press', [], { mm: 0 }],
  ])('of %s', (_, presses, slug) => {
    expect(frameSlug(shopOf(...presses).presses)).toEqual(slug);
  });

  it('is in what is pushed to the stop where no kerf is given', () => {
    const push = (slug: string | null, kerf: string | null = null) => {
      const shop = shopOf(loses(slug));
      const call = new SheetRuntime(shop).call('FRAMECUTS', 48, 30, 'L3X3X1/4', shop.stamp, 'in', kerf);
      const [titles = [], first = []] = call as (string | number)[][];
      return first[titles.indexOf('Push')];
    };
    // 48 + 3/8 · √2 and 48 + 1/8 · √2 in
    expect(push('3/8')).toBeCloseTo(48.53033, 5);
    expect(push('3/8', '1/8')).toBeCloseTo(48.17678, 5);
    expect(push('none')).toBe(48);
    expect(push(null)).toBe('not known: a press does not give its Angle shear slug');
  });
});
