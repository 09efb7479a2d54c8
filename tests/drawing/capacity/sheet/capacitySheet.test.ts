import { describe, expect, it } from 'vitest';
import { findGrade } from '../../../../src/core/material/findGrade.js';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import { checkRow } from '../../../../src/core/row/checkRow.js';
import { readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { capacitySheet } from '../../../../src/drawing/capacity/sheet/capacitySheet.js';
import { greatestText, holeText, veeText } from '../../../../src/print/capacity/capacityPage.js';
import { shopWith } from '../../../support/sampleShop.js';

const grades = ['A36', 'A572-50'].map((name) => findGrade(name, 'Grade'));
const sheetOf = (cells: Record<string, CellValue> = {}) => {
  const shop = shopWith(cells);
  const [press] = shop.presses;
  if (!press) throw new Error('the sample shop has no press');
  return { shop, sheet: capacitySheet(press, shop, grades) };
};

const { shop, sheet } = sheetOf();
const inch = 25.4;
const fraction = (mm: number) => `${mm / inch}`;

/** The word of a row of a list: the way in which a part is checked. */
function verdict(cells: Record<string, CellValue>): string {
  const row = { Grade: 'A36', Length: 12, Press: 'Bay A', ...cells };
  const result = checkRow(Object.values(row), readHeadings(Object.keys(row)), shop);
  return result.blank ? '' : result.verdict;
}

describe('every hole of the sheet', () => {
  const cells = (sheet.punch?.rows ?? []).flatMap(({ thicknessMm, cells: own }) =>
    own.map((cell, at) => ({ thicknessMm, cell, Grade: sheet.grades[at] ?? '' })),
  );
  it.each(cells.filter(({ cell }) => cell.is === 'holes'))(
    '$Grade, $thicknessMm mm',
    ({ thicknessMm, cell, Grade }) => {
      if (cell.is !== 'holes') throw new Error('no holes');
      const word = (mm: number) =>
        verdict({
          Grade,
          Section: `PL${fraction(thicknessMm)}x11`,
          Hole: fraction(mm),
          Holes: 1,
          Edge: 5.5,
          End: 6,
          'Cut by': 'saw',
        });
      const step = inch / 16;
      if (cell.shareMm !== undefined) {
        expect(word(cell.shareMm)).toBe('OK');
        expect(word(cell.shareMm + step)).not.toBe('OK');
        expect(word(cell.leastMm)).toBe('OK');
        if (cell.leastMm > step) expect(word(cell.leastMm - step)).toBe('Hole too small');
      }
      expect(['OK', 'Near limit']).toContain(word(cell.ratingMm));
      expect(['Over capacity', 'Too big']).toContain(word(cell.ratingMm + step));
    },
  );

  it('by hand, in 1/2 in of A36: 1-1/2 through 1/2 at 50 ksi is 117.8 kip, 0.75 × 80 ksi takes it with 1-1/4 in', () => {
    const byHandIn = (Math.PI * 1.5 * 0.5 * 50) / (Math.PI * 0.5 * 0.75 * 80);
    const half = sheet.punch?.rows.find(({ thicknessMm }) => Math.abs(thicknessMm - inch / 2) < 1e-6);
    expect(byHandIn).toBeCloseTo(1.25, 9);
    expect(holeText(half?.cells[0] ?? { is: 'none' }, 'in')).toBe('1/2 to 1 (1-1/4)');
  });
});

describe('every bar of the sheet', () => {
  const sections: Record<string, (column: string, size: string) => string> = {
    'Flat bar, cut square': (column, size) => `FB ${size}x${column.replace(' wide', '')}`,
    'Angle, cut square': (column, size) => `${column.replaceAll(' ', '').replace('×', 'x')}x${size}`,
    'Angle, cut at 45°': (column, size) => `${column.replaceAll(' ', '').replace('×', 'x')}x${size}`,
    'Round and square bar': (column, size) => `${column === 'Round' ? 'RB' : 'SQ'} ${size}`,
  };
  const cells = sheet.shears.flatMap(({ title, columns, rows }) =>
    rows.flatMap(({ grade, cells: own }) =>
      own.map((cell, at) => ({ title, column: columns[at] ?? '', Grade: grade, cell })),
    ),
  );

  it('is of each station of the press', () => {
    expect(sheet.shears.map(({ title }) => title)).toEqual(Object.keys(sections));
    expect(cells.length).toBeGreaterThan(20);
  });

  it.each(cells)('$title, $column, $Grade', ({ title, column, Grade, cell }) => {
    if (cell.is !== 'size') throw new Error(`no size: ${cell.is}`);
    const word = (mm: number) =>
      verdict({
        Grade,
        Section: sections[title]?.(column, fraction(mm)) ?? '',
        ...(title.includes('45') ? { 'Miter left': 45, Length: 40 } : { Length: 40 }),
      });
    if (cell.shareMm !== undefined) expect(word(cell.shareMm)).toBe('OK');
    expect(word(cell.ratingMm)).toBe(cell.ratingMm === cell.shareMm ? 'OK' : 'Near limit');
  });

  it('by hand: a square bar of A36 is 60 / 50 of the rated size, so 1-1/4 in squared · 50 / 60 leaves 1-1/8 in', () => {
    const byHandIn = Math.sqrt((1.25 ** 2 * 50) / 60);
    const shareIn = Math.sqrt((0.8 * 1.25 ** 2 * 50) / 60);
    expect([byHandIn, shareIn].map((each) => each.toFixed(3))).toEqual(['1.141', '1.021']);
    const bars = sheet.shears.find(({ title }) => title.startsWith('Round'));
    expect(greatestText(bars?.rows[0]?.cells[1] ?? { is: 'none' }, 'in')).toBe('1 (1-1/8)');
  });
});

describe('the V openings of the sheet', () => {
  it('are those of the press, each with the thickest plate it bends and how long', () => {
    expect(sheet.vees.map(({ veeMm }) => (veeMm / inch).toFixed(3))).toEqual([
      '1.000',
      '1.500',
      '2.000',
      '3.000',
      '4.000',
    ]);
    const ofA36 = sheet.vees.map(({ cells: [cell] }) => (cell ? veeText(cell, 'in') : ''));
    // The least inside radius of A36 is 1.5 t, and r = V / 6: V is 9 t or more, so 1 in is too narrow for 1/8 in.
    expect(ofA36).toEqual(['–', '1/8, 18 long', '3/16, 18 long', '1/4, 18 long', '3/8, 18 long']);
  });
});

describe('what is not known', () => {
  it('is a question mark, never a size', () => {
    const { sheet: open } = sheetOf({ 'Punch stroke': null, 'Bar shear round': null, 'Angle shear': 'no' });
    expect(open.punch?.rows.flatMap(({ cells }) => cells.map(({ is }) => is))).not.toContain('holes');
    const bars = open.shears.find(({ title }) => title.startsWith('Round'));
    expect(bars?.rows[0]?.cells.map((cell) => greatestText(cell, 'in'))).toEqual(['?', '1 (1-1/8)']);
    expect(open.shears.some(({ title }) => title.startsWith('Angle'))).toBe(false);
    expect(open.missing).toContain('Angle shear');
    expect(open.facts.find(({ name }) => name === 'Punch stroke')).toEqual({ name: 'Punch stroke' });
  });

  it('and an invented press is marked as such', () => {
    expect(sheetOf({ Invented: 'yes' }).sheet.isInvented).toBe(true);
    expect(sheet.isInvented).toBe(false);
  });
});
