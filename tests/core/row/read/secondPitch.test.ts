// What p2, p3 and p4 are: across on a plate, the next spaces of the line elsewhere.
import { describe, expect, it } from 'vitest';
import { readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { readRow } from '../../../../src/core/row/readRow.js';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { bayAInMillimeters, settingTable, shopWith } from '../../../support/sampleShop.js';

const shop = shopWith(bayAInMillimeters, { settings: settingTable({ Units: 'mm', 'Edge code': 'EN' }) });

function read(row: Record<string, CellValue>) {
  const cells = { Section: 'L 80x80x8', Grade: 'S235', Length: 500, d0: 18, e1: 40, ...row };
  const job = readRow(Object.values(cells), readHeadings(Object.keys(cells)), shop);
  const [group] = job.groups;
  const problems = job.problems.map((each) => (each.rule === 'refusal' ? each.failure.problem : ''));
  return { pitchMm: group?.pitchMm, pitchesMm: group?.pitchesMm, gageMm: group?.gageMm, problems };
}

const plate = { Section: 'FL 100x10' };

describe('p2, p3 and p4', () => {
  it.each([
    ['the next space on an angle', { n: 3, p1: 50, p2: 60 }, { pitchesMm: [50, 60] }],
    ['the next space beside a gage', { n: 3, p1: 50, p2: 60, w1: 45 }, { pitchesMm: [50, 60], gageMm: 45 }],
    ['spaces, text and numbers', { n: 4, p1: 50, p2: '62,5', p3: 70 }, { pitchesMm: [50, 62.5, 70] }],
    ['one pitch where they are alike', { n: 4, p1: 50, p2: 50, p3: 50 }, { pitchMm: 50 }],
    ['blank', { n: 3, p1: 50, p2: '-', p3: null }, { pitchMm: 50 }],
    ['across on a plate', { ...plate, n: 4, p1: 50, p2: 40 }, { pitchMm: 50, gageMm: 40 }],
    ['across without p1', { ...plate, n: 2, p2: 40 }, { gageMm: 40 }],
    ['spaces beside p3 on a plate', { ...plate, n: 4, p1: 50, p2: 60, p3: 50 }, { pitchesMm: [50, 60, 50] }],
  ])('are %s', (_, row, expected) => {
    expect(read(row)).toMatchObject({ ...expected, problems: [] });
  });

  it('are refused where they have not the spaces of the line', () => {
    expect(read({ n: 4, p1: 50, p2: 60 }).problems).toEqual([
      "'50; 60' is 2 spaces, so 3 holes in a line; the row says 4.",
    ]);
  });

  it('are asked about on a plate with three holes', () => {
    expect(read({ ...plate, n: 3, p1: 50, p2: 40 }).problems).toEqual([
      'it may lie between two lines of holes, or be the second space of a line of 3. Call the column Gage, or write both spaces under Pitch.',
    ]);
  });

  it('need the space before them', () => {
    expect(read({ n: 2, p1: null, p2: 60 }).problems).toEqual([
      'it is a space of a line of holes, and p1, the one before it, is blank. Fill it in.',
    ]);
  });
});
