import { describe, expect, it } from 'vitest';
import { pressValue } from '../../../src/core/press/press.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

function openings(cell: CellValue) {
  const [press] = shopWith({ 'Bend V openings': cell }).presses;
  if (!press) throw new Error('the sample shop has no press');
  const value = pressValue(press, 'bendVeeOpenings');
  return value.state === 'list' ? value.values.map((mm) => Number((mm / 25.4).toFixed(9))) : value.state;
}

describe('Bend V openings of the Presses table', () => {
  it.each([
    ['1, 1-1/2, 2', [1, 1.5, 2]],
    ['2, 1-1/2, 1, 2', [1, 1.5, 2]],
    ['1; 1-1/2; 2', [1, 1.5, 2]],
    ['1,5; 2', [1.5, 2]],
    ['25.4 mm, 2"', [1, 2]],
    [2, [2]],
  ])('%j is read as sizes, smallest first, each once', (cell, sizes) => {
    expect(openings(cell)).toEqual(sizes);
  });

  it.each([
    ['none', 'none'],
    [null, 'unknown'],
    ['abc', 'bad'],
    ['1, x, 2', 'bad'],
    [';', 'bad'],
    ['2,', 'bad'],
    ['1,125', 'bad'],
    // A host may make a 0 of a blank cell.
    [0, 'unknown'],
  ])('%j is %s', (cell, state) => {
    expect(openings(cell)).toBe(state);
  });

  it('equal lists give an equal stamp, other lists another', () => {
    const stamp = (cell: CellValue) => shopWith({ 'Bend V openings': cell }).stamp;
    expect(stamp('2, 1-1/2, 1')).toBe(stamp('1; 1.5; 2'));
    expect(stamp('1, 2')).not.toBe(stamp('1, 1-1/2, 2'));
  });

  it('is shown by PRESSVALUE as text', () => {
    const shop = shopWith();
    const sheet = new SheetRuntime(shop);
    expect(sheet.call('PRESSVALUE', 'Bay A', 'Bend V openings', shop.stamp)).toBe('1, 1-1/2, 2, 3, 4');
  });
});
