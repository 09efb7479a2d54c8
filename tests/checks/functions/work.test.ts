import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { bayA, type PressCells, pressTable, settingTable, shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

/** Every time that a row can take, so that nothing of it is invented. Seconds and minutes. */
const times: PressCells = {
  'Hourly rate': 90,
  'Seconds to position a hit': 10,
  'Seconds to advance a cut': 12,
  'Seconds to mark out a hole': 20,
  'Seconds to deburr': 5,
  'Seconds to stage a bar': 60,
  'Minutes per tool change': 4,
  'Minutes per holder change': 6,
  'Minutes per gauge setting': 2,
  'Strokes per minute': 30,
  'Strokes per minute travel': 2,
};
const settings = {
  'First piece minutes': 3,
  'Seconds per piece mark': 4,
  'Handling classes': '50 lb 10 ft: 8; 500 lb: 60; more: 200',
  'Bar lengths': '20 ft',
  'Material price': '1 per lb',
  Markup: 0.2,
};

type Part = Record<string, CellValue>;
const clip: Part = {
  Mark: 'C1',
  Qty: 10,
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Holes: 2,
  Bolt: '3/4',
  Edge: '1-1/2',
  End: '1-1/2',
  'End kind': 'sheared',
  Pitch: 3,
};

/**
 * Common practice, no source: a press that has no station for a row does not run it, whatever the other does; each is
 * what ROWCHECK says of a row that names it, whose own checks are those of ROWCHECK.
 */
describe('ROWPRESS', () => {
  const shop = readShop({
    presses: pressTable({ 'Bay A': { ...bayA, ...times }, 'Bay B': { ...bayA, Punch: 'no' } }),
    settings: settingTable(settings),
  });

  it('has a row for each press, whichever the row names', () => {
    const headings = [...Object.keys(clip), 'Press'];
    const cells = [...Object.values(clip), 'Bay B'];
    const sheet = new SheetRuntime(shop);
    const result = sheet.call('ROWPRESS', [headings], [cells], shop.stamp) as CellValue[][];
    expect(result.map(([press, verdict]) => [press, verdict])).toEqual([
      ['Press', 'Verdict'],
      ['Bay A', 'OK'],
      ['Bay B', 'No station'],
    ]);
    const onA = sheet.call('ROWCHECK', [headings], [[...Object.values(clip), 'Bay A']], shop.stamp, 'use');
    expect(result[1]?.[2]).toBe((onA as CellValue[][])[0]?.[0]);
    expect(result[2]?.slice(4)).toEqual(['', '']);
  });

  it('refuses a blank row with what to give', () => {
    const sheet = new SheetRuntime(shopWith());
    const blank = Object.keys(clip).map(() => null);
    expect(() => sheet.call('ROWPRESS', [Object.keys(clip)], [blank], shopWith().stamp)).toThrow(
      /row is blank/,
    );
  });
});
