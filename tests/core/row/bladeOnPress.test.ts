import { describe, expect, it } from 'vitest';
import { checkRow } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/readHeadings.js';
import { noteOf } from '../../../src/core/say/noteOf.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

function checked(grade: string, limit: PressCells[string], section = 'FB 3/8x4') {
  const shop = shopWith({ 'Blade material limit': limit });
  const row = { Mark: 'F1', Qty: 1, Section: section, Grade: grade, Length: 12, Press: 'Bay A' };
  const result = checkRow(Object.values(row), readHeadings(Object.keys(row)), shop);
  if (result.blank) throw new Error('blank');
  return { verdict: result.verdict, note: noteOf(result, shop.unit) };
}

describe('The blade material limit of a press', () => {
  it('keeps a stronger grade off the shear though the force is within the rating', () => {
    // A514 to 2-1/2 in: 110 to 130 ksi.
    expect(checked('A514', '90 ksi')).toEqual({
      verdict: 'Over capacity',
      note: "The tensile strength of A514, up to 130 ksi, is over Bay A's blade material limit, 90 ksi.",
    });
    expect(checked('A514', '130 ksi').verdict).toBe('OK');
  });

  it('holds at the flat, the angle and the bar shear', () => {
    for (const section of ['FB 3/8x4', 'L 3x3x1/4', 'RB 3/4'])
      expect(checked('A36', '79 ksi', section).verdict).toBe('Over capacity');
  });

  it('leaves sawn sections alone', () => {
    expect(checked('A36', '10 ksi', 'W8X31').verdict).toBe('Off press');
  });

  it('is not asked for where the press gives none', () => {
    for (const blank of [null, '', 'none']) expect(checked('A514', blank).verdict).toBe('OK');
  });

  it('is not checked against a grade of which only the shear strength is known', () => {
    const { verdict, note } = checked('shear 310 MPa', '90 ksi');
    expect(verdict).toBe('Not checked');
    expect(note).toContain('so the blade material limit of Bay A was not checked');
  });

  it('that cannot be read is told', () => {
    expect(checked('A36', 'soft').verdict).toBe('Check input');
  });
});
