// Notches and corner clips that start on a mitered end: no cell says from where on the slant.
import { describe, expect, it } from 'vitest';
import { checkedRow, type Row } from '../../../support/checkedRow.js';
import { shopWith } from '../../../support/sampleShop.js';

const shop = shopWith({ 'Flat shear thickest bar': 1, 'Flat shear widest bar thickness': 1 });
const mitered: Row = { Section: 'PL3/8X6', Length: 12, Qty: 1, 'Miter left': 45, 'Long side': 'top' };
const notch: Row = { 'Notch width': 2, 'Notch depth': 2 };
const check = (row: Row) =>
  checkedRow({ Grade: 'A36', Press: 'Bay A', ...mitered, 'Cut by': 'burn', ...row }, shop);
const isTold = (row: Row) =>
  check(row).findings.some((each) => each.rule === 'not held' && each.why === 'cut on a miter');

describe('a cut that starts on a mitered end', () => {
  it.each<[string, Row]>([
    ['a notch in its corner', { ...notch, 'Notch at': 'bottom left' }],
    ['a notch in the end', { ...notch, 'Notch at': 'left end 3' }],
    ['a clipped corner', { 'Corner clip': 2, 'Clip at': 'top left' }],
    ['every corner clipped', { 'Corner clip': 1, Corners: 4 }],
    ['a notch, and a long side that is not given', { ...notch, 'Notch at': 'left end 3', 'Long side': null }],
  ])('is open: %s', (_what, cells) => {
    const { verdict, note } = check(cells);
    expect(verdict).toBe('OK so far');
    expect(note).toMatch(
      /starts? on a mitered end, and where (it lies|they lie) on the slant was not checked\. Check it by hand\./,
    );
    const square = check({ ...cells, 'Miter left': null, 'Long side': null });
    expect(['OK', 'Off press'], square.note).toContain(square.verdict);
  });

  it.each<[string, Row]>([
    ['in the corner of the square end', { ...notch, 'Notch at': 'bottom right' }],
    ['in the square end', { ...notch, 'Notch at': 'right end 3' }],
    ['in a long edge', { ...notch, 'Notch at': 'top edge 6' }],
    ['clipped from the square end', { 'Corner clip': 2, 'Clip at': 'top right' }],
    [
      'in the leg that is not mitered',
      {
        Section: 'L4X3X1/4',
        'Long side': 'heel',
        'Miter leg': 'long',
        'Corner clip': 1,
        'Clip at': 'toe left of short leg',
      },
    ],
  ])('is not one %s', (_where, cells) => {
    expect(isTold(cells)).toBe(false);
    expect(check(cells).note).not.toContain('slant');
  });

  it('is told once for several', () => {
    const { note } = check({ ...notch, 'Notch at': 'bottom left', 'Corner clip': 1, 'Clip at': 'top left' });
    expect(note).toMatch(/^Notch 1 and clipped corner 1 start on a mitered end, and where they lie /);
  });

  it('may be one, where a cell would say so', () => {
    expect(check({ 'Corner clip': 2, Corners: 1 }).note).toMatch(
      /^Clipped corner 1 may start on a mitered end, .* Fill in Clip at to settle it\./,
    );
    const leg: Row = {
      Section: 'L4X3X1/4',
      'Long side': 'heel',
      'Corner clip': 1,
      'Clip at': 'toe left of short leg',
    };
    expect(check(leg).note).toContain('Fill in Miter leg to settle it.');
    expect(isTold({ ...leg, 'Miter leg': 'both' })).toBe(true);
  });
});
