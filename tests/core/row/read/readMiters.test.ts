import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBothMiters } from '../../../../src/core/row/read/readMiters.js';
import { radianPerDegree } from '../../../../src/core/quantity/units.js';
import { checkedRow } from '../../../support/checkedRow.js';
import { refusalText } from '../../../support/refusal.js';
import { shopWith } from '../../../support/sampleShop.js';

const degrees = (text: string | number) => {
  const { left, right } = readBothMiters(text, 'Miter');
  return [left, right].map((rad) =>
    rad === undefined ? undefined : Math.round((rad / radianPerDegree) * 1e6) / 1e6,
  );
};

describe('the miters of both ends in one cell', () => {
  it.each([
    ['both 45', 45, 45],
    ['45 both ends', 45, 45],
    ['45° each end', 45, 45],
    ['2x45°', 45, 45],
    ['beidseitig 45°', 45, 45],
    ['45° beidseitig', 45, 45],
    ['45 beide', 45, 45],
    ['45/30', 45, 30],
    ['45° / 30°', 45, 30],
    ['22,5/22,5', 22.5, 22.5],
    ['45/-', 45, 0],
    ['-/45', 0, 45],
    ['sq/45', 0, 45],
    ['left 45', 45, undefined],
    ['45 right', undefined, 45],
    ['L45 R30', undefined, undefined],
    ['L 45, R 30', 45, 30],
    ['45° li', 45, undefined],
    ['links 22-1/2', 22.5, undefined],
    ['rechts 45°', undefined, 45],
    ['both 22-1/2', 22.5, 22.5],
  ])('%s', (text, left, right) => {
    if (text === 'L45 R30') expect(refusalText(() => degrees(text))).toContain('Miter:');
    else expect(degrees(text)).toEqual([left, right]);
  });

  it.each(['45', '45°', 45, '22-1/2', '5:12'])('%s alone does not say at which end', (text) => {
    expect(refusalText(() => degrees(text))).toBe(
      `Miter: ${typeof text === 'number' ? text : `'${text}'`} does not say at which end. Write left 45, both 45, or 45/30 for left and right.`,
    );
  });

  it('never gives another angle than one that is written', () => {
    const angle = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(angle, angle, fc.constantFrom('/', ' / ', '°/'), (a, b, mark) => {
        expect(degrees(`${a}${mark}${b}`)).toEqual([a, b]);
      }),
    );
  });
});

describe('a list with one column for both', () => {
  const row = { Section: 'FB 1/4x3', Grade: 'A36', Length: 24, Press: 'Bay A' };

  it('is read as with a column for each', () => {
    const one = checkedRow({ ...row, Gehrung: '45/-' }, shopWith());
    const each = checkedRow({ ...row, 'Miter left': 45, 'Miter right': '-' }, shopWith());
    expect(one.findings).toEqual(each.findings);
  });

  it('is refused beside one of them', () => {
    expect(checkedRow({ ...row, Gehrung: '45/-', 'Gehrung links': 45 }, shopWith()).note).toContain(
      'Gehrung: Gehrung links says how the end is cut, too. Keep one of them.',
    );
  });
});

describe('a miter of less than one degree', () => {
  const verdict = (miter: string | number) =>
    checkedRow(
      { Section: 'FB3/8X4', Grade: 'A36', Length: 24, Press: 'Bay A', 'Miter left': miter },
      shopWith(),
    );

  it.each([Math.PI / 4, 0.5, '.5', '0,5'])(
    '%s is refused as a bare number, which an angle in rad is',
    (miter) => {
      expect(verdict(miter).verdict).toBe('Check input');
      expect(verdict(miter).note).toContain('is less than one degree. Write degrees, such as 45');
    },
  );
  it.each(["0°30'", '1/8:12', 0, '0.0', 1, 22.5])('%s is one', (miter) => {
    expect(verdict(miter).note).not.toContain('less than one degree');
    expect(verdict(miter).verdict).not.toBe('Check input');
  });
});
