// Two bends in plate 1/4 in thick and 6 in wide on Bay A; from the middle of its bending punch to its side 1/2 in.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../support/checkedRow.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const plate: Row = { Section: 'PL1/4X6', Length: 20, Qty: 1, 'Bend length': 6, Bends: 2 };

function check(row: Row, cells: PressCells = {}) {
  const shop = shopWith({ 'Bend length': 30, 'Bend V openings': '3', 'Punch force': 200, ...cells });
  return checkedRow({ Grade: 'A36', Press: 'Bay A', ...plate, ...row }, shop);
}

describe('legs of a plate with two bends', () => {
  it('are OK where the shorter has room beside the punch', () => {
    // (6 − 4) / √2 = 1.41 in.
    expect(check({ 'Bend at': 'left end 4, left end 10' }).verdict).toBe('OK');
  });

  it('are not checked where the bends, both the same way, would close on the punch', () => {
    const { verdict, note } = check({ 'Bend at': 'left end 8, left end 11' });
    expect(verdict).toBe('Not checked');
    expect(note).toContain(
      'Bend 1 and bend 2: if both go the same way to 90°, the leg of 8 in beyond bend 1 is longer than the 3 in between them and meets the punch. Check it by hand.',
    );
  });

  it('reach the middle of the punch where they are as long as the web', () => {
    const { verdict, note } = check({ Length: 12, 'Bend at': 'left end 4, right end 4' });
    expect(verdict).toBe('Not checked');
    expect(note).toContain('the leg of 4 in beyond bend 1 comes within 0 in of the middle of the punch');
  });

  it('need more room beside a wider punch', () => {
    const row = { 'Bend at': 'left end 4, left end 10' };
    const { verdict, note } = check(row, { 'Bend punch half width': '1-1/2' });
    expect(verdict).toBe('Not checked');
    expect(note).toContain('the leg of 4 in beyond bend 1 comes within 1.414 in of the middle of the punch');
    expect(check(row, { 'Bend punch half width': 'none' }).verdict).toBe('OK');
  });

  it('are not checked on a press that does not say how wide its punch is', () => {
    const { verdict, note } = check(
      { 'Bend at': 'left end 4, left end 10' },
      { 'Bend punch half width': null },
    );
    expect(verdict).toBe('Not checked');
    expect(note).toContain('Bend punch half width of Bay A is blank, so it was not checked.');
  });

  it('do not matter to a single bend', () => {
    const one = { Bends: 1, 'Bend at': 'left end 4' };
    expect(check(one, { 'Bend punch half width': null }).verdict).toBe('OK');
  });
});
