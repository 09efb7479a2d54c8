import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkedRow } from '../../support/checkedRow.js';
import { shopWith } from '../../support/sampleShop.js';

function noteWith(hole: string, ...tools: CellValue[][]): string {
  const row = {
    Section: 'FB 3/8x4',
    Grade: 'A36',
    Length: 12,
    Hole: hole,
    Edge: 2,
    End: 2,
    Press: 'Bay A',
  };
  const shop = shopWith({}, { tools: [['Press', 'Kind', 'Shape', 'Size', 'Length'], ...tools] });
  return checkedRow(row, shop).note;
}

describe('the nearest tools on hand', () => {
  const punch = ['any', 'punch', 'round', '13/16', null];

  it('are named as they stand in the table, a bare number as every size of the shop', () => {
    const dies = [
      ['any', 'die', 'round', '22.8 mm', null],
      ['any', 'die', 'round', 0.96875, null],
    ];
    expect(noteWith('13/16', punch, ...dies)).toContain('nearest on hand: Ø22.8 mm, Ø31/32.');
  });

  it('are named with both their sizes', () => {
    const slot = ['any', 'punch', 'slot', '21 mm', '48 mm'];
    expect(noteWith('13/16x1-7/8', slot)).toContain('nearest on hand: slot 21 mm × 48 mm.');
    expect(noteWith('13/16', slot)).toContain('none of that shape is on hand');
  });
});
