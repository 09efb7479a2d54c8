import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../src/core/material/findGrade.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { toolsForHole } from '../../../src/core/row/toolsForHole.js';
import { refusalText } from '../../support/refusal.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';

const inch = 25.4;
const steel = findGrade('A36', 'Grade');
const crib: CellValue[][] = [
  ['Press', 'Kind', 'Size', 'Body'],
  ['any', 'punch', '20.6 mm', null],
  ['any', 'die', '27/32', null],
  ['any', 'punch', '1', 2],
  ['any', 'die', '1-1/32', null],
];

function toolsFor(diameterMm: number, cells: PressCells = {}, tools: CellValue[][] | undefined = crib) {
  const shop = shopWith(cells, { tools });
  const [press] = shop.presses;
  if (!press) throw new Error('the sample has no press');
  return toolsForHole(press, { shape: 'round', diameterMm }, 10, steel, shop);
}

describe('the tools for a hole', () => {
  it('leave the clearance that the two make, not the one wanted', () => {
    expect(toolsFor((13 / 16) * inch)).toMatchObject({
      is: 'picked',
      clearanceMm: 0.83125,
      punch: { written: 'Ø20.6 mm' },
      die: { written: 'Ø27/32' },
    });
  });

  it('are stopped by what is lacking, or not known', () => {
    expect(toolsFor(15)).toMatchObject({ is: 'stopped', finding: { verdict: 'No tool', lacking: 'punch' } });
    expect(toolsFor(inch)).toMatchObject({
      is: 'stopped',
      finding: { verdict: 'Not checked', rule: 'tool body' },
    });
    expect(toolsFor(inch, { 'Punch body': '1-1/2' })).toMatchObject({ finding: { verdict: 'No tool' } });
    expect(toolsFor(inch, { 'Punch body': 'none' })).toMatchObject({ is: 'picked' });
    expect(toolsFor(inch, { Punch: 'no' })).toMatchObject({ finding: { verdict: 'No station' } });
    expect(toolsFor(inch, { Punch: null })).toMatchObject({ finding: { rule: 'blank item', item: 'punch' } });
  });

  it('are refused where the station of the press cannot be read', () => {
    expect(refusalText(() => toolsFor(inch, { Punch: 'perhaps' }))).toContain(
      "Bay A, Punch: 'perhaps' is not yes or no.",
    );
  });

  it('are not known where the shop keeps no list', () => {
    const shop = shopWith();
    const [press] = shop.presses;
    if (!press) throw new Error('the sample has no press');
    expect(toolsForHole(press, { shape: 'round', diameterMm: 20 }, 10, steel, shop)).toEqual({
      is: 'no list of tools',
    });
  });
});
