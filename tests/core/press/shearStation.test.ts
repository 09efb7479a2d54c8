import { describe, expect, it } from 'vitest';
import { shearFindings } from '../../../src/core/press/shearStation.js';
import { readSection } from '../../../src/core/section/readSection.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const mild = 50 * 6.894757293168361;

function found(designation: string, miterRad = 0, cells: PressCells = {}) {
  const [press] = shopWith(cells).presses;
  if (!press) throw new Error('the sample shop has no press');
  const { section } = readSection(designation, 'Section', 'in');
  return shearFindings(press, { section, shearStrengthMPa: mild, miterRad });
}
const told = (...given: Parameters<typeof found>) =>
  found(...given).map((finding) => `${finding.rule} ${finding.outcome}`);

describe('shearFindings', () => {
  it.each([
    ['FB 1/2x12', 0, ['press limit held', 'widest bar held', 'plate thickness held', 'share held']],
    ['FB 1/2x13', 0, ['press limit held', 'widest bar failed']],
    ['FB 13/16x8', 0, ['press limit held', 'widest bar held', 'plate thickness failed', 'share failed']],
    ['L3X3X1/4', 0, ['press limit held', 'press limit held', 'share held']],
    ['L3X3X1/4', 0.5, ['miter held', 'miter held', 'press limit held', 'press limit held', 'share held']],
    ['L3X3X1/4', 1, ['miter failed']],
    ['RB 1', 0, ['press limit held', 'share held']],
    ['RB 1', 0.5, ['miter failed']],
    ['C8X11.5', 0, []],
  ])('lists what it asked of %s cut at %d rad, held or not', (designation, miterRad, rules) => {
    expect(told(designation, miterRad)).toEqual(rules);
  });

  it('says that a press states nothing to hold a flat against', () => {
    const items = ['widest bar', 'widest bar thickness', 'thickest bar', 'thickest bar width'];
    const none = Object.fromEntries(items.map((item) => [`Flat shear ${item}`, 'none']));
    expect(found('FB 1/2x4', 0, none).at(-1)).toEqual({
      rule: 'nothing stated',
      outcome: 'open',
      verdict: 'Not checked',
      press: 'Bay A',
      of: 'flat shear',
    });
  });

  it('gives the size on the plate that a share is taken of', () => {
    expect(found('L3X3X3/8', Math.PI / 4).at(-1)).toMatchObject({
      operation: 'angle shear',
      plate: { sizesMm: [3 * 25.4, 0.375 * 25.4], cut: 'at 45°' },
    });
  });

  it('has a share of nothing where the plate has no limit', () => {
    const share = found('RB 1', 0, { 'Bar shear round': 'none', 'Share of rating to use': 'abc' }).at(-1);
    expect(share).toMatchObject({ rule: 'share', outcome: 'held', use: 0 });
    expect(share).not.toHaveProperty('plate');
  });
});
