import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { pressItemMeaning, pressItems, type PressItem } from '../../../../src/core/press/item/pressItem.js';
import { checkRow } from '../../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { shopWith } from '../../../support/sampleShop.js';

const usual = pressItems.filter((item: PressItem) => item.whenBlank !== undefined) as PressItem[];

/** A press that leans on every usual value: no rated sizes, a stroke that just suffices, a share near the limit. */
const leaning = {
  'Shear force': 16,
  'Flat shear widest bar': 'none',
  'Flat shear widest bar thickness': 'none',
  'Flat shear thickest bar': 'none',
  'Flat shear thickest bar width': 'none',
  'Punch stroke': '17.5 mm',
  'Punch largest hole': '13/16',
  'Punch largest hole thickness': '1/2',
};

function findings(cells: Record<string, CellValue>) {
  const row = { Section: 'FB 3/8x4', Grade: 'A36', Length: 12, Hole: '13/16', Press: 'Bay A' };
  const shop = shopWith({ ...leaning, ...cells });
  const result = checkRow(Object.values(row), readHeadings(Object.keys(row)), shop);
  return result.blank ? [] : result.findings;
}

describe('the usual value of a press item', () => {
  it('is named by five that stand for one value, and by the smallest parts of each shear', () => {
    const ofChecks = usual.filter(({ whenBlank }) => !whenBlank?.in.includes('invented'));
    expect(ofChecks.map(({ key }) => key)).toEqual([
      'shareToUse',
      'referenceShear',
      'punchWorkingGap',
      'bladeMaterialLimit',
      'flatShearDullBlade',
      'flatShearShortestPiece',
      'flatShearNarrowestBar',
      'flatShearThinnestBar',
      'angleShearShortestPiece',
      'angleShearSmallestLeg',
      'barShearShortestPiece',
      'barShearSmallestSize',
    ]);
  });

  it.each(usual.slice(0, 5))('is what a blank cell of $name stands for', ({ name, whenBlank }) => {
    const blank = findings({ [name]: null });
    // The gap is 6 mm and near 1/4 in; the strength is 50 ksi and near 345 MPa.
    const exact = name === 'Punch working gap' ? whenBlank?.mm : whenBlank?.in;
    expect(blank).toEqual(findings({ [name]: exact ?? null }));
    const other = { 'Share of rating to use': 0.4, 'Reference shear strength': '400 MPa' }[name];
    const changed = other ?? (name === 'Punch working gap' ? '6.1 mm' : 1.5);
    expect(blank).not.toEqual(findings({ [name]: changed }));
  });

  it('is told in the unit of the shop, and nothing is told of an item that has none', () => {
    const gap = pressItems.find(({ key }) => key === 'punchWorkingGap') as PressItem;
    expect(pressItemMeaning(gap, 'in')).toMatch(/stroke; about 1\/4 in when blank$/);
    expect(pressItemMeaning(gap, 'mm')).toMatch(/stroke; 6 mm when blank$/);
    const throat = pressItems.find(({ key }) => key === 'punchThroat') as PressItem;
    expect(pressItemMeaning(throat, 'in')).toBe(throat.meaning);
  });
});
