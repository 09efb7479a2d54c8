import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();

describe('SECTIONAREA', () => {
  it.each([
    ['L2X2X1/4', '0.944'],
    ['L3X3X1/4', '1.44'],
    ['L3-1/2X3-1/2X3/8', '2.50'],
    ['L4X4X1/2', '3.75'],
    ['L5X3X1/4', '1.94'],
    ['L6X4X1/2', '4.75'],
    ['C8X11.5', '3.37'],
    ['C15X50', '14.7'],
  ])('AISC Manual, Part 1 (held against a reprint): %s is %s in²', (section, area) => {
    // The Manual measures an angle with its fillet: one or two in the last place.
    expectPrinted(sheet.number('SECTIONAREA', section), area, 7);
  });

  it.each([
    ['L80x80x8', '12.3'],
    ['L150x150x15', '43.0'],
    ['UPN 200', '32.2'],
  ])('EN 10056-1, EN 10365: %s is %s cm² (digits from memory)', (section, cm2) => {
    expectPrinted(sheet.number('SECTIONAREA', section, 'mm') / 100, cm2);
  });
});

describe('PAINTAREA', () => {
  it.each([
    ['FB 1/2x4', 2 * (0.5 + 4)],
    ['L3X3X1/4', 2 * (3 + 3)],
    ['RB 1', Math.PI],
    ['SQ 1', 4],
  ])('%s has an outline of %d in; 10 ft of it (plane geometry)', (section, perimeter) => {
    expect(sheet.number('PAINTAREA', section, `10'`)).toBeCloseTo((perimeter / 12) * 10, 10);
  });
});

describe('SECTIONDIM', () => {
  it.each([
    ['C8X11.5', 'depth', '8.00'],
    ['C8X11.5', 'width', '2.26'],
    ['C8X11.5', 'web thickness', '0.220'],
    ['C8X11.5', 'flange thickness', '0.390'],
    ['C12X20.7', 'web thickness', '0.282'],
  ])('AISC Manual, Part 1 (held against a reprint): %s, %s %s in', (section, item, inches) => {
    expectPrinted(sheet.number('SECTIONDIM', section, item), inches);
  });

  it.each([
    ['UPN 100', 'depth', 100],
    ['UPN 100', 'width', 50],
    ['UPN 100', 'flange thickness', 8.5],
    ['L80x80x8', 'root radius', 10],
    ['L80x60x7', 'short leg', 60],
  ])('EN 10365, EN 10056-1: %s, %s %d mm (from memory)', (section, item, mm) => {
    expect(sheet.number('SECTIONDIM', section, item, 'mm')).toBeCloseTo(mm, 9);
  });
});

describe('GRADEVALUE', () => {
  it.each([
    ['ASTM A36', ['A36', 'tensile min'], '58'],
    ['ASTM A36', ['A36', 'tensile upper'], '80'],
    ['ASTM A572', ['A572-50', 'tensile min'], '65'],
    ['EN 10025-2', ['S355', 'tensile upper', 'mm'], '630'],
    ['CSA G40.21 (held against a reprint)', ['350W', 'tensile min', 'mm'], '450'],
    ['ASTM A514 (from memory)', ['A514', 'tensile upper'], '130'],
    ['three quarters of 80 ksi (common practice, no source)', ['A36', 'shear'], '60.0'],
    ['EN 10058 and others: steel in kg/m³', ['S235', 'density', 'mm'], '7850'],
    ['US tables of steel in lb/ft³ (from memory)', ['A36', 'density'], '490'],
  ] as const)('%s: %j is %s', (_, inputs, value) => {
    expectPrinted(sheet.number('GRADEVALUE', ...inputs), value);
  });

  it('names the source it has', () => {
    expect(sheet.call('GRADEVALUE', 'S355', 'source')).toContain('EN 10025-2');
  });
});

describe('FEETINCH', () => {
  it.each([
    [30.5, `2'-6 1/2"`],
    [12, `1'-0"`],
    [9.5, /^(?:0'-)?9 1\/2"$/],
    ['774.7 mm', `2'-6 1/2"`],
  ])('%s is %s, and reads as the same length (notation: common practice, no source)', (length, text) => {
    const written = String(sheet.call('FEETINCH', length));
    expect(written).toMatch(text instanceof RegExp ? text : new RegExp(`^${text}$`));
    const inches = typeof length === 'number' ? length : Qty(length).to('in').scalar;
    expect(sheet.number('LENGTH', written)).toBeCloseTo(inches, 9);
  });

  it.each([
    [0.3, 16, '5/16'],
    [0.3, 4, '1/4'],
    [0.3, 8, '1/4'],
    [0.32, 8, '3/8'],
  ])('rounds %d in to the nearest of 1/%d', (length, denominator, text) => {
    expect(sheet.call('FEETINCH', length, 'in', denominator)).toContain(text);
  });
});
