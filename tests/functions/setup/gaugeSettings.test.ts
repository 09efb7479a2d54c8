import { describe, expect, it } from 'vitest';
import { shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const shop = shopWith({ 'Left stop greatest reach': 30, 'Right stop greatest reach': 30 });
const sheet = new SheetRuntime(shop);
const bar = sheet.call('HOLESROW', 120, 3, 2, 'in', 24, 2) as number[][];

describe('GAUGESETTINGS', () => {
  it('names the end at the stop on the right, and the holes that are marked out', () => {
    expect(sheet.call('GAUGESETTINGS', bar, 120, 4, shop.stamp, 'none')).toEqual([
      ['Setting', 'Stop', 'Fence', 'Hits', 'Way round', 'Stop side'],
      [1, 3, 2, 1, 'as it lies, row 1', 'left'],
      [2, 25.8, 2, 1, 'as it lies, row 2', 'left'],
      [3, 3, 2, 1, 'as it lies, right end at the stop, row 6', 'right'],
      [4, 25.8, 2, 1, 'as it lies, right end at the stop, row 5', 'right'],
      ['mark out', '', '', 2, 'out of reach: rows 3 and 4', ''],
    ]);
  });

  it('takes the rows of the range as they are counted there, blank ones too', () => {
    const range = [
      [2, 2],
      [null, null],
      [10, 8],
    ];
    expect(sheet.call('GAUGESETTINGS', range, 12, 10)).toEqual([
      expect.anything(),
      [1, 2, 2, 2, 'as it lies, row 1; turned end for end, row 3', 'left'],
    ]);
  });

  it('and GAUGECOUNT says in words what is left over', () => {
    expect(sheet.call('GAUGECOUNT', bar, 120, 4, shop.stamp, 'none')).toBe(
      '4 settings and 2 holes to mark out by hand',
    );
    expect(sheet.call('GAUGECOUNT', bar, 120, 4, shop.stamp)).toBe(
      '2 settings and 2 holes to mark out by hand',
    );
    expect(sheet.call('GAUGECOUNT', bar, 120, 4, 'in', 'none')).toBe(6);
  });
});
