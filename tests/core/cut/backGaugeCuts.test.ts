import { describe, expect, it } from 'vitest';
import { type BackGaugeCuts, backGaugeCuts } from '../../../src/core/cut/backGaugeCuts.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { checkedPart } from '../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import {
  gaugeSettingWords,
  leftOutSentence,
  overReachSentence,
  strokeStartWords,
} from '../../../src/core/say/backGaugeWords.js';
import { findPress } from '../../../src/core/shop/findPress.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

type Row = Record<string, CellValue>;

const gauge = { 'Back gauge reach': 40, 'Back gauge starts the stroke': 'yes', 'Angle shear slug': '3/8' };
const miters = { 'Miter left': 45, 'Miter right': 45 };

function cutsOf(rows: readonly Row[], cells: PressCells = gauge): BackGaugeCuts {
  const shop = shopWith(cells);
  const parts = rows.map((row) => {
    const whole: Row = { Mark: '', Qty: 1, Grade: 'A36', Press: 'Bay A', ...row };
    const checked = checkedPart(Object.values(whole), readHeadings(Object.keys(whole)), shop);
    return { mark: String(whole['Mark']), ...checked };
  });
  return backGaugeCuts(parts, findPress('Bay A', 'Press', shop));
}

describe('backGaugeCuts', () => {
  it('sorts the cuts of each section and grade, longest first, and puts like pieces together', () => {
    const { sections } = cutsOf([
      { Mark: 'A1', Qty: 4, Section: 'FB 3/8x4', Length: 12 },
      { Mark: 'A2', Qty: 2, Section: 'FB 3/8x4', Length: 20 },
      { Mark: 'A3', Qty: 1, Section: 'FB 3/8x4', Length: 12 },
      { Mark: 'A4', Qty: 1, Section: 'FB 3/8x4', Length: 12, Grade: 'A572-50' },
      { Mark: 'B1', Qty: 6, Section: 'RB 3/4', Length: 18 },
    ]);
    expect(sections.map(({ section, grade, cuts }) => [section, grade, cuts.length])).toEqual([
      ['FB3/8X4', 'A36', 2],
      ['FB3/8X4', 'A572-50', 1],
      ['RB3/4', 'A36', 1],
    ]);
    expect(sections[0]?.cuts.map(({ lengthMm, pieces }) => [Math.round(lengthMm / 25.4), pieces])).toEqual([
      [20, [{ mark: 'A2', qty: 2 }]],
      [
        12,
        [
          { mark: 'A1', qty: 4 },
          { mark: 'A3', qty: 1 },
        ],
      ],
    ]);
  });

  it('adds the slug to what is pushed of an angle, and none to that of a flat', () => {
    const long = { 'Long side': 'heel', ...miters };
    const cuts = cutsOf([
      { Section: 'L3X3X1/4', Length: 30 },
      { Section: 'L3X3X1/4', Length: 20, ...long },
      { Section: 'FB 3/8x4', Length: 20 },
    ]).sections.flatMap((section) => section.cuts);
    const inches = cuts.map(({ setting }) => ('mm' in setting ? setting.mm / 25.4 : setting.gap));
    expect(inches).toEqual(
      [30.375, 20 + 0.375 * Math.SQRT2, 20].map((each) => expect.closeTo(each, 9) as number),
    );
    expect(cuts.map(({ hand }) => hand)).toEqual([undefined, 'both', undefined]);
  });

  it('names what leaves a setting open', () => {
    const [first, second] = cutsOf(
      [
        { Section: 'L3X3X1/4', Length: 30 },
        { Section: 'FB 3/8x4', Length: 20, ...miters },
      ],
      {},
    ).sections.flatMap((section) => section.cuts);
    expect(first?.setting).toEqual({ gap: 'Angle shear slug' });
    expect(second?.setting).toEqual({ gap: 'Long side' });
    expect(first && gaugeSettingWords(first, 'in')).toBe(
      'not known: Angle shear slug is blank or cannot be read',
    );
  });

  it('tells touch from pedal, and names what is over the reach', () => {
    const rows = [
      { Mark: 'A1', Section: 'FB 3/8x4', Length: 40 },
      { Mark: 'A2', Section: 'FB 3/8x4', Length: 41 },
      { Mark: 'A3', Section: 'FB 3/8x4', Length: 41 },
    ];
    const cuts = cutsOf(rows);
    expect(cuts.sections[0]?.cuts.map(({ reach, starts }) => [reach, starts])).toEqual([
      ['over', 'pedal'],
      ['within', 'touch'],
    ]);
    expect(overReachSentence(cuts, 'in')).toBe(
      'Over the back gauge of Bay A, which reaches 40 in: A2 and A3 (41 in). Mark these out.',
    );
    const by = (cells: PressCells) => cutsOf(rows, cells).sections[0]?.cuts[0];
    expect(by({})).toMatchObject({ reach: 'unknown', starts: 'unknown' });
    expect(by({ 'Back gauge reach': 'none', 'Back gauge starts the stroke': 'no' })).toMatchObject({
      reach: 'within',
      starts: 'pedal',
    });
    expect(overReachSentence(cutsOf(rows, {}), 'in')).toBeUndefined();
    expect(cuts.sections[0]?.cuts.map(strokeStartWords)).toEqual([
      'pedal',
      'touching the stop starts the stroke',
    ]);
    expect(cuts.sections[0]?.cuts.map((cut) => gaugeSettingWords(cut, 'in'))).toEqual(['41 in', '40 in']);
  });

  it('leaves out what the press does not cut, and names rows that fail', () => {
    const cuts = cutsOf([
      { Mark: 'A1', Section: 'C8X11.5', Length: 40 },
      { Mark: 'A2', Section: 'FB 3/8x4', Length: 12, 'Cut by': 'saw', Hole: '13/16', Edge: 2, End: 2 },
      { Mark: 'A3', Section: 'PL1X8', Length: 12 },
      { Mark: 'A4', Section: 'FB 3/8x4', Length: 12, Press: 'Bay B' },
      { Mark: '', Section: null, Grade: null, Press: null, Qty: null },
    ]);
    expect(cuts.sections).toEqual([]);
    expect(cuts.left).toEqual([{ mark: 'A3', verdict: 'Too big' }]);
    expect(leftOutSentence(cuts)).toBe('Not cut as they stand: A3 (Too big).');
    expect(leftOutSentence(cutsOf([]))).toBeUndefined();
  });
});
