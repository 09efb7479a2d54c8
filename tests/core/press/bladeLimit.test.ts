import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { bayAInMillimeters, settingTable, shopWith } from '../../support/sampleShop.js';

const bar: Row = { Grade: 'S355', Press: 'Bay A', Section: 'FL 80x10', Length: 400, Qty: 2 };

function checked(limit: string | null, row: Row = {}) {
  const cells = { ...bayAInMillimeters, 'Blade material limit': limit };
  const settings = settingTable({ Units: 'mm', 'Edge code': 'EN' });
  return checkedRow({ ...bar, ...row }, shopWith(cells, { settings }));
}

describe('the blades of the shears', () => {
  it.each([
    // EN 10025-2 Table 6: S355 470 to 630 MPa from 3 to 100 mm, 510 to 680 under 3 mm; S235 360 to 510.
    ['500 MPa', {}, 'Over capacity'],
    ['629 MPa', {}, 'Over capacity'],
    ['630 MPa', {}, 'OK'],
    ['630 MPa', { Section: 'FL 80x2.5' }, 'Over capacity'],
    ['680 MPa', { Section: 'FL 80x2.5' }, 'OK'],
    ['500 MPa', { Grade: 'S235' }, 'Over capacity'],
    ['500 MPa', { Section: 'L50x5' }, 'Over capacity'],
    ['500 MPa', { Section: 'RD 20' }, 'Over capacity'],
    ['510 MPa', { Grade: 'S235' }, 'OK'],
    ['none', {}, 'OK'],
    [null, {}, 'OK'],
    ['500 MPa', { 'Cut by': 'saw' }, 'Off press'],
    ['500 MPa', { Section: 'UPN100' }, 'Off press'],
    ['sharp', {}, 'Check input'],
  ] as const)('for %s: %j is %s', (limit, row, verdict) => {
    expect(checked(limit, row).verdict).toBe(verdict);
  });

  it('say what they are for', () => {
    expect(checked('500 MPa').note).toContain(
      'S355 comes with a tensile strength of up to 630 MPa; the blades of Bay A are for up to 500 MPa.',
    );
  });

  it('are not checked for a grade without an upper tensile strength', () => {
    const { verdict, note } = checked('500 MPa', { Grade: 'shear 310 MPa' });
    expect(verdict).toBe('Not checked');
    expect(note).toMatch(/has no upper tensile strength; the blades of Bay A are for up to 500 MPa\./);
  });
});
