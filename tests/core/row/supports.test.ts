import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { bayA, type PressCells, pressTable, settingTable } from '../../support/sampleShop.js';
import { checkedRow, type Row } from '../../support/checkedRow.js';

// A flat bar 1/4 by 4 weighs 3.40 lb a foot: 20 ft of it 68 lb, 6 ft 20.4 lb. Common practice, no source.
const bar: Row = { Mark: 'CW1', Qty: 4, Section: 'FB 1/4x4', Grade: 'A36', Length: 72 };

function told(cells: PressCells, settings: Record<string, CellValue>, row: Row = bar) {
  const presses = pressTable({ 'Bay A': { ...bayA, ...cells } });
  const { verdict, note } = checkedRow(row, readShop({ presses, settings: settingTable(settings) }));
  return `${verdict}: ${note.split('. ')[0] ?? ''}`;
}

const twentyFeet = { 'Bar lengths': '20 ft' };

describe('The supports carry', () => {
  it('the bar that a part is cut from, where the shop says how long its bars are', () => {
    expect(told({ 'Longest bar': 240, 'Heaviest bar': 69 }, twentyFeet)).toMatch(/^OK/);
    expect(told({ 'Longest bar': 144 }, twentyFeet)).toMatch(
      /^Too big: .*the bar it is cut from, 240 in long, is over Bay A's longest bar, 144 in/i,
    );
    expect(told({ 'Heaviest bar': 60 }, twentyFeet)).toMatch(
      /^Too big: .*the bar it is cut from, 68 lb, is/i,
    );
  });

  it('the part alone, where nobody says how long the bars are, or a saw cuts them', () => {
    expect(told({ 'Longest bar': 144 }, {})).toMatch(/^OK/);
    expect(told({ 'Longest bar': 144 }, { 'Bar lengths': 'L 20 ft' })).toMatch(/^OK/);
    const sawn = { ...bar, Hole: '13/16', Edge: 2, End: 3, Bolt: '3/4', 'Cut by': 'saw' };
    expect(told({ 'Longest bar': 144 }, twentyFeet, sawn)).not.toMatch(/Too big/);
    expect(told({ 'Longest bar': 60 }, twentyFeet, sawn)).toMatch(/^Too big: .*a part 72 in long/i);
  });

  it('a plate that is cut from bar, and not one from sheet', () => {
    const plate = { ...bar, Section: 'PL 1/4x4' };
    const short = { 'Longest bar': 144 };
    expect(told(short, { ...twentyFeet, 'Bar stock to width': 'from bar' }, plate)).toMatch(/^Too big/);
    expect(told(short, twentyFeet, plate)).not.toMatch(/Too big/);
  });
});
