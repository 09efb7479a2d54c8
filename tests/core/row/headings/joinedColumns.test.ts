import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../../src/core/quantity/cellValue.js';
import type { LengthUnit } from '../../../../src/core/quantity/units.js';
import { isBlankRow } from '../../../../src/core/row/blankRow.js';
import { readHeadings } from '../../../../src/core/row/headings/readHeadings.js';
import { readRow } from '../../../../src/core/row/readRow.js';
import { readShop } from '../../../../src/core/shop/readShop.js';
import { sayEach } from '../../../support/checkedRow.js';
import { bayA, pressTable } from '../../../support/sampleShop.js';

function read(headings: string[], cells: CellValue[], unit: LengthUnit = 'in') {
  const shop = readShop({
    presses: pressTable({ 'Bay A': bayA }),
    settings: [
      ['Setting', 'Value'],
      ['Units', unit],
    ],
  });
  const job = readRow(cells, readHeadings(headings), shop);
  return {
    section: job.section?.designation,
    lengthMm: job.lengthMm,
    problems: sayEach(job.problems, shop),
  };
}

describe('thickness and width in columns of their own', () => {
  it.each([
    [['Thickness', 'Width', 'Grade'], ['3/8', '6', 'A36'], 'in', 'PL3/8X6'],
    [['Thk', 'Wd', 'Grade'], ['3/8', 6, 'A36'], 'in', 'PL3/8X6'],
    [['t', 'b', 'Werkstoff'], [10, 100, 'S235'], 'mm', 'PL10X100'],
    [['Dicke', 'Breite', 'Güte'], ['10', '100', 'S235'], 'mm', 'PL10X100'],
    [['Thk (mm)', 'Width (mm)', 'Grade'], [10, '100', 'A36'], 'in', 'PL10X100'],
    [['Shape', 'Thk', 'Wd', 'Grade'], ['FB', '3/8', '4', 'A36'], 'in', 'FB3/8X4'],
    [['Shape', 'Thk', 'Wd', 'Grade'], ['Flat bar', '3/8', '4', 'A36'], 'in', 'FB3/8X4'],
    [['Section', 'Thk', 'Wd', 'Grade'], ['L3X3X1/4', null, null, 'A36'], 'in', 'L3X3X1/4'],
    [['Section', 'Thk', 'Wd', 'Grade'], ['L3X3X1/4', '1/4', '3', 'A36'], 'in', 'L3X3X1/4'],
  ] as const)('%j %j in %s is %s', (headings, cells, unit, designation) => {
    expect(read([...headings], [...cells], unit)).toMatchObject({ section: designation, problems: [] });
  });

  it('tells a size that is missing at its columns', () => {
    expect(read(['Thk', 'Wd', 'Grade'], ['3/8', null, 'A36']).problems[0]).toMatch(
      /^Thk and Wd: 'PL 3\/8 x' is not a section/,
    );
  });

  it('a row without either is blank', () => {
    const headings = readHeadings(['Thk', 'Wd', 'Grade']);
    expect(isBlankRow([null, '', null], headings)).toBe(true);
    expect(isBlankRow(['3/8', '', null], headings)).toBe(false);
  });
});

describe('feet and inches in columns of their own', () => {
  const headings = ['Section', 'Grade', 'Feet', 'Inches'];
  it.each([
    [10, '6 1/2', 126.5],
    ['10', 6, 126],
    ["10'", '6"', 126],
    [null, '6 1/2', 6.5],
    [10, null, 120],
    [10, 0, 120],
  ])('%j and %j make %d in', (feet, inches, length) => {
    expect(read(headings, ['FB 3/8x4', 'A36', feet, inches]).lengthMm).toBeCloseTo(length * 25.4, 6);
  });

  it('a column Length goes before them', () => {
    const { lengthMm } = read([...headings, 'Length'], ['FB 3/8x4', 'A36', 10, 6, '12']);
    expect(lengthMm).toBeCloseTo(304.8, 6);
  });

  it('13 inches are told', () => {
    expect(read(headings, ['FB 3/8x4', 'A36', 1, 13]).problems[0]).toContain('is not a length');
  });
});

describe('a unit in the heading holds for text', () => {
  it.each([
    ['Length (ft)', '40', 'in', 40 * 304.8],
    ['Length (ft)', 40, 'in', 40 * 304.8],
    ['Length (m)', '13', 'mm', 13_000],
    ['Length (m)', '6.000', 'mm', 6000],
    ['Length (mm)', '300', 'in', 300],
    ['Length (in)', '12', 'mm', 304.8],
    ['Length (mm)', "2'-6", 'in', 762],
    ['Length (ft)', '40 in', 'in', 1016],
  ] as const)('%s %j in %s is %d mm', (heading, cell, unit, lengthMm) => {
    expect(read(['Section', 'Grade', heading], ['L3X3X1/4', 'A36', cell], unit).lengthMm).toBeCloseTo(
      lengthMm,
      6,
    );
  });

  it('a fraction below mm is refused, not read as a part of a mm', () => {
    expect(read(['Section', 'Grade', 'Length (mm)'], ['L3X3X1/4', 'A36', '3/8'], 'in').problems).toEqual([
      "Length (mm): '3/8 mm' is a fraction of an inch with a metric unit. Write the fraction in inches, or a decimal.",
    ]);
  });

  it('a section reads its bare numbers in it, and its names as they are', () => {
    const section = (text: string, unit: LengthUnit) =>
      read(['Size (mm)', 'Grade'], [text, 'A36'], unit).section;
    expect(section('FL 100x10', 'in')).toBe('FB10X100');
    expect(section('L3X3X1/4', 'in')).toBe('L3X3X1/4');
    expect(section('C8X11.5', 'in')).toBe('C8X11.5');
  });
});
