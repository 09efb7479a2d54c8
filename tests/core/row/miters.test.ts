import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readHeadings } from '../../../src/core/row/headings/readHeadings.js';
import { readRow } from '../../../src/core/row/readRow.js';
import { shopWith } from '../../support/sampleShop.js';

const shop = shopWith();

function read(row: Record<string, CellValue>) {
  const whole: Record<string, CellValue> = { Section: 'PL1/4X4', Grade: 'A36', Length: 12, ...row };
  return readRow(Object.values(whole), readHeadings(Object.keys(whole)), shop);
}

describe('the miters of a row', () => {
  it('are kept for each end, in rad, and the steeper of the two beside them', () => {
    const job = read({ 'Miter left': 30, 'Miter right': '45°' });
    // 30° = π/6 = 0.523599, 45° = π/4 = 0.785398
    expect(job.miterLeftRad).toBeCloseTo(0.523599, 6);
    expect(job.miterRightRad).toBeCloseTo(0.785398, 6);
    expect(job.miterRad).toBe(job.miterRightRad);
    expect(read({ 'Miter left': 45, 'Miter right': 30 }).miterRad).toBeCloseTo(0.785398, 6);
  });

  it.each([{}, { 'Miter left': null, 'Miter right': '' }, { 'Miter left': 0 }])(
    'are 0 at square ends: %o',
    (row) => {
      expect(read(row)).toMatchObject({ miterLeftRad: 0, miterRightRad: 0, miterRad: 0 });
    },
  );

  it('are read to 60° and refused above, the other end still read', () => {
    expect(read({ 'Miter left': 60 })).toMatchObject({ miterLeftRad: Math.PI / 3, problems: [] });
    const job = read({ 'Miter left': 60.5, 'Miter right': 20 });
    expect(job.miterLeftRad).toBe(0);
    expect(job.miterRightRad).toBeCloseTo(0.349066, 6);
    expect(job.problems).toMatchObject([{ verdict: 'Check input', about: 'Miter left' }]);
  });
});
