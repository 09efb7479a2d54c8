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

describe('a punch whose height is known', () => {
  const row = {
    Mark: 'P1',
    Section: 'FB 3/8x4',
    Grade: 'A36',
    Length: 12,
    Hole: '13/16',
    'Holes at': 'x2 y2',
    Press: 'Bay A',
  };
  function checked(height: CellValue, open: CellValue) {
    const tools: CellValue[][] = [
      ['Press', 'Kind', 'Shape', 'Size', 'Height'],
      ['any', 'punch', 'round', '13/16', height],
      ['any', 'die', 'round', '27/32', null],
    ];
    return checkedRow(row, shopWith({ 'Punch stroke': 2, 'Punch open height': open }, { tools }));
  }

  // The tip stands 9 − 5 = 4 over the die and goes 5/64 into it: 4.079 of travel, more than the stroke of 2.
  it('is no tool where the stroke ends before it is in the die', () => {
    const { verdict, note } = checked(5, 9);
    expect(verdict).toBe('No tool');
    expect(note).toContain(
      'Punch Ø13/16 does not reach the die on Bay A: it must travel 4.079 in, and the stroke is 2 in. Use a longer punch.',
    );
  });

  // The tip stands 9 − 8-1/2 = 1/2 over the die; 3/8 of work and 1/4 of gap need 5/8.
  it('is no tool where it does not clear the work', () => {
    const { verdict, note } = checked('8-1/2', 9);
    expect(verdict).toBe('No tool');
    expect(note).toContain(
      'Punch Ø13/16 does not clear the work on Bay A: at the top of the stroke it stands 1/2 in over the die, and work and gap need 5/8 in. Use a shorter punch.',
    );
  });

  it('is a tool where it clears the work and reaches the die, or where one of the two is not known', () => {
    expect(checked(8, 9).verdict).toBe('OK');
    expect(checked(5, null).verdict).toBe('OK');
    expect(checked(null, 9).verdict).toBe('OK');
  });

  it('needs an open height that can be read, or none', () => {
    expect(checked(5, 'tall').verdict).toBe('Check input');
    expect(checked(null, 'tall').verdict).toBe('OK');
    expect(checked(5, 'none').verdict).toBe('OK');
  });
});
