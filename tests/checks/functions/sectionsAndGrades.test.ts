import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();

describe('SECTIONAREA', () => {
  it.each([
    ['EN 10056-1 (from memory)', 'L50x50x5', '4.80'],
    ['EN 10056-1 (from memory)', 'L80x80x8', '12.3'],
    ['EN 10056-1 (from memory)', 'L100x100x10', '19.2'],
    ['EN 10056-1 (from memory)', 'L150x150x15', '43.0'],
    ['EN 10365 (checked against a reprint)', 'UPN100', '13.5'],
    ['EN 10365 (checked against a reprint)', 'UPN200', '32.2'],
    ['EN 10219-2 (from memory)', 'RHS100x50x5', '13.4'],
    ['EN 10219-2 (from memory)', 'CHS60.3x3.2', '5.74'],
  ])('%s, %s: %s cm²', (_, section, printed) => {
    expectPrinted(sheet.number('SECTIONAREA', section, 'mm') / 100, printed);
  });

  it.each([
    ['C8X11.5', '3.37'],
    ['C8X13.7', '4.03'],
    ['C12X20.7', '6.08'],
    ['L3X3X1/4', '1.44'],
    ['L4X4X1/2', '3.75'],
  ])('AISC Manual Part 1, %s: %s in² (checked against a reprint)', (section, printed) => {
    expectPrinted(sheet.number('SECTIONAREA', section), printed);
  });
});

describe('PAINTAREA', () => {
  it.each([
    ['EN 10056-1 (from memory)', 'L50x50x5', '0.194'],
    ['EN 10056-1 (from memory)', 'L80x80x8', '0.311'],
    ['EN 10056-1 (from memory)', 'L100x100x10', '0.390'],
    ['EN 10219-2 (from memory)', 'RHS100x50x5', '0.283'],
    ['EN 10219-2 (from memory)', 'CHS60.3x3.2', '0.189'],
  ])('%s, %s: %s m²/m', (_, section, printed) => {
    expectPrinted(sheet.number('PAINTAREA', section, 1000, 'mm'), printed);
  });

  it('a plate 1/2 × 6 in and 2 ft long has 13/12 ft of perimeter and 2-1/6 ft² (plane geometry)', () => {
    expect(sheet.number('PAINTAREA', 'PL1/2X6', `2'-0`)).toBeCloseTo(13 / 6, 12);
  });
});

describe('SECTIONDIM', () => {
  // AISC Manual Part 1 (checked against a reprint): depth, flange width, web, flange.
  it.each([
    ['C3X4.1', 3, 1.41, 0.17, 0.273],
    ['C6X8.2', 6, 1.92, 0.2, 0.343],
    ['C8X11.5', 8, 2.26, 0.22, 0.39],
    ['C10X15.3', 10, 2.6, 0.24, 0.436],
    ['C12X20.7', 12, 2.94, 0.282, 0.501],
    ['C15X33.9', 15, 3.4, 0.4, 0.65],
  ])('%s: %d × %d, %d, %d in', (section, depth, width, web, flange) => {
    expect(sheet.number('SECTIONDIM', section, 'depth')).toBeCloseTo(depth, 12);
    expect(sheet.number('SECTIONDIM', section, 'width')).toBeCloseTo(width, 12);
    expect(sheet.number('SECTIONDIM', section, 'web thickness')).toBeCloseTo(web, 12);
    expect(sheet.number('SECTIONDIM', section, 'flange thickness')).toBeCloseTo(flange, 12);
  });

  // EN 10365 (checked against a reprint).
  it.each([
    ['UPN80', 80, 45, 6, 8],
    ['UPN140', 140, 60, 7, 10],
    ['UPN200', 200, 75, 8.5, 11.5],
  ])('%s: %d × %d, %d, %d mm', (section, depth, width, web, flange) => {
    expect(sheet.number('SECTIONDIM', section, 'depth', 'mm')).toBe(depth);
    expect(sheet.number('SECTIONDIM', section, 'width', 'mm')).toBe(width);
    expect(sheet.number('SECTIONDIM', section, 'web thickness', 'mm')).toBe(web);
    expect(sheet.number('SECTIONDIM', section, 'flange thickness', 'mm')).toBe(flange);
  });

  it.each([
    ['L50x50x5', 7],
    ['L80x80x8', 10],
    ['L100x100x10', 12],
    ['L150x150x15', 16],
  ])('EN 10056-1, root radius of %s: %d mm (from memory)', (section, radius) => {
    expect(sheet.number('SECTIONDIM', section, 'root radius', 'mm')).toBe(radius);
  });

  it('has no web of a round bar', () => {
    expect(sheet.error('SECTIONDIM', 'RB 1', 'web thickness').code).toBe('#N/A');
  });
});

describe('GRADEVALUE', () => {
  // Tensile strength in the product standards; an upper bound of common practice is marked in the grade's own source.
  it.each([
    ['ASTM A36', 'A36', 58, 80],
    ['ASTM A572; upper: common practice', 'A572-50', 65, 85],
    ['ASTM A529 (from memory)', 'A529-50', 65, 100],
    ['ASTM A588 (from memory); upper: common practice', 'A588', 70, 90],
    ['ASTM A992; upper: common practice', 'A992', 65, 85],
    ['ASTM A514 (from memory)', 'A514', 110, 130],
    ['ASTM A240; upper: common practice', '304', 75, 100],
  ])('%s: %s %d to %d ksi', (_, grade, least, upper) => {
    expect(sheet.number('GRADEVALUE', grade, 'tensile min')).toBeCloseTo(least, 12);
    expect(sheet.number('GRADEVALUE', grade, 'tensile upper')).toBeCloseTo(upper, 12);
  });

  it.each([
    ['EN 10025-2', 'S235', 360, 510],
    ['EN 10025-2', 'S275', 410, 560],
    ['EN 10025-2', 'S355', 470, 630],
    ['EN 10025-3 (from memory)', 'S460', 540, 720],
    ['CSA G40.21 (checked against a reprint)', '300W', 450, 620],
    ['CSA G40.21 (checked against a reprint)', '350W', 450, 650],
  ])('%s: %s %d to %d MPa', (_, grade, least, upper) => {
    expect(sheet.number('GRADEVALUE', grade, 'tensile min', 'mm')).toBe(least);
    expect(sheet.number('GRADEVALUE', grade, 'tensile upper', 'mm')).toBe(upper);
  });

  it.each([
    ['Mild', '50.0', 'common practice, no source'],
    ['A36', '60.0', '0.75 of 80 ksi: common practice, no source'],
    ['304', '75.0', 'common practice, no source'],
    [
      '6061-T6',
      '34.5',
      'Aluminum Standards and Data, 30 ksi typical (from memory), × 1.15 (common practice)',
    ],
    [
      '5052-H32',
      '23.0',
      'Aluminum Standards and Data, 20 ksi typical (from memory), × 1.15 (common practice)',
    ],
    [
      '3003-H14',
      '16.1',
      'Aluminum Standards and Data, 14 ksi typical (from memory), × 1.15 (common practice)',
    ],
    ['Brass C260', '40.0', 'common practice, no source'],
    ['Copper C110', '26.0', 'common practice, no source'],
  ])('shear strength of %s: %s ksi (%s)', (grade, shear) => {
    expectPrinted(sheet.number('GRADEVALUE', grade, 'shear'), shear);
  });

  it.each([
    ['A36', '7850', '490'],
    ['304', '7900', '493'],
    ['6061-T6', '2700', '169'],
    ['C260', '8530', '533'],
    ['C110', '8940', '558'],
  ])('density of %s: %s kg/m³, %s lb/ft³ (general references, from memory)', (grade, metric, inch) => {
    expectPrinted(sheet.number('GRADEVALUE', grade, 'density', 'mm'), metric);
    expectPrinted(sheet.number('GRADEVALUE', grade, 'density'), inch);
  });

  it('names the standard', () => {
    expect(sheet.call('GRADEVALUE', 'S355J2', 'source')).toContain('EN 10025-2');
  });
});

describe('FEETINCH', () => {
  // Feet and inches as drawings write them: common practice, no source.
  it.each([
    [30.5, null, `2'-6 1/2"`],
    [12, null, `1'-0"`],
    [6.5, null, `0'-6 1/2"`],
    [11.96875, null, `1'-0"`], // 11-31/32 in sixteenths
    [11.96875, 32, `0'-11 31/32"`],
    [478, 2, `39'-10"`],
    [143 + 31 / 32, null, `12'-0"`], // a half of a sixteenth goes up
    [0.59375, null, `0'-0 5/8"`], // 19/32
  ])('%d in to 1/%s: %s', (length, denominator, text) => {
    expect(sheet.call('FEETINCH', length, 'in', denominator)).toBe(text);
  });

  it('0.3048 m are a foot (NIST SP 811, from memory)', () => {
    expect(sheet.call('FEETINCH', 304.8, 'mm')).toBe(`1'-0"`);
  });
});
