// A text that names another grade than the part's: common practice, no source; the names are those of the product standards.
import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import { namesOtherGrade } from '../../../src/core/row/gradeInText.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();
const a36 = findGrade('A36', 'Grade');

describe('a grade in a text', () => {
  it.each(['use A572-50', 'A992', 'A572 Gr 50 req', 'S355', 'S355J2 only', 'change to a588'])(
    'is another than A36: %s',
    (text) => expect(namesOtherGrade(text, a36, shop)).toBe(true),
  );

  it.each([
    ...['stainless', 'stainless steel'],
    ...['304 SS', 'SS304', 'T304', '316L', 'type 316', 'AR400', 'AR 500', '50 ksi', 'aluminum', '6061-T6'],
    ...['corten', 'COR-TEN', 'weathering steel', 'gr 50'],
  ])('is another material than A36: %s', (text) => expect(namesOtherGrade(text, a36, shop)).toBe(true));

  it('is no other where the part is made of it', () => {
    for (const [text, name] of [
      ['stainless 304 SS', '304'],
      ['T316L', '316L'],
      ['aluminum', '6061-T6'],
      ['weathering', 'A588'],
      ['50 ksi', 'A992'],
      ['Fy = 36 ksi', 'A36'],
    ] as const)
      expect(namesOtherGrade(text, findGrade(name, 'Grade'), shop), text).toBe(false);
  });

  it.each([
    'A36',
    'ASTM A36 steel',
    'see A12',
    'S1',
    'A325 bolts',
    'mark S101',
    'frame A5',
    '36 ksi',
    'grade beam',
  ])('is none, or the same: %s', (text) => expect(namesOtherGrade(text, a36, shop)).toBe(false));

  it('is the same in any spelling of its name', () => {
    const grade = findGrade('A572-50', 'Grade');
    for (const name of ['A572-50', 'a572 gr 50', 'A572 Grade 50', 'A572 Gr. 50'])
      expect(namesOtherGrade(`use ${name}`, grade, shop)).toBe(false);
  });
});
