import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const shop = shopWith();
const groover = shopWith({ 'Punch force': '100 kN', 'Bend V openings': '16 mm, 25 mm, 40 mm' });
const sheet = new SheetRuntime(shop, groover);

describe('STRIPFORCE', () => {
  it('Kalpakjian & Schmid: Ø25, 3.2 mm, 0.7 · 1000 MPa, punching ≈ 176 kN (digits from memory); 15% of it: 26.4 kN (common practice, no source)', () => {
    expectPrinted(sheet.number('PUNCHFORCE', 25, 3.2, 'shear 700 MPa', 'mm'), '176');
    expectPrinted(sheet.number('STRIPFORCE', 25, 3.2, 'shear 700 MPa', 'mm'), '26.4');
  });

  it('lies within 10 to 20% of the punching force (common practice, no source)', () => {
    const share =
      sheet.number('STRIPFORCE', '13/16', '1/2', 'A36') / sheet.number('PUNCHFORCE', '13/16', '1/2', 'A36');
    expect(share).toBeGreaterThanOrEqual(0.1);
    expect(share).toBeLessThanOrEqual(0.2);
  });
});

describe('NOTCHFORCE', () => {
  // Cut × thickness × shear strength along the whole cut: common practice, no source. Cuts by plane geometry.
  it.each([
    ['edge', 30, 20, 70],
    ['corner', 30, 20, 50],
    ['vee', 30, 20, 50], // flanks of 25: a 15-20-25 triangle
    ['vee', 24, 5, 26], // flanks of 13: a 12-5-13 triangle
  ] as const)('%s notch %d wide, %d deep: a cut of %d mm', (where, width, depth, cut) => {
    const forceKn = sheet.number('NOTCHFORCE', width, depth, 10, 'shear 345 MPa', 'mm', where);
    expect(forceKn).toBeCloseTo((cut * 10 * 345) / 1000, 9);
  });

  it('1 in² of cut in mild steel takes 25 US tons: 50 ksi is 25 US tons per square inch (NIST SP 811, from memory)', () => {
    expect(sheet.number('NOTCHFORCE', 2, 1, '1/4', 'Mild')).toBeCloseTo(25, 9);
  });
});

describe('BENDFORCE', () => {
  it('Groover, V bending: 450 MPa, 44.5 mm, 3.2 mm, V 25: 10,909 N (digits from memory)', () => {
    expectPrinted(1000 * sheet.number('BENDFORCE', 44.5, 3.2, 'tensile 450 MPa', 'mm', 25), '10,909');
  });

  it('takes a V of ten times the thickness where none is given (common practice, no source)', () => {
    const given = sheet.number('BENDFORCE', 300, 6, 'tensile 450 MPa', 'mm', 60);
    expect(sheet.number('BENDFORCE', 300, 6, 'tensile 450 MPa', 'mm')).toBe(given);
  });

  const stepsOf = (...call: (string | number)[]) =>
    (sheet.call('WORKING', 'BENDFORCE', ...call) as (string | number)[][]).slice(1);
  const result = (steps: (string | number)[][], title: string) =>
    Number(steps.find(([step]) => step === title)?.[3]);

  it.each([
    ['A36', '1.5'],
    ['A572-50', '1.5'],
    ['A514', '1.75'],
  ])('ASTM A6 Table X4.2, least inside radius of %s: %s t (checked against a reprint)', (grade, multiple) => {
    const radius = result(stepsOf(300, 10, grade, 'mm'), 'Least inside radius of the grade');
    expectPrinted(radius / 10, multiple, 1e-9);
  });

  it('the bend has about V / 6 of inside radius and needs about 0.77 V of flange (common practice, no source)', () => {
    const steps = stepsOf(300, 6, 'A36', 'mm', 60);
    expectPrinted(result(steps, 'Inside radius of the bend'), '10', 1e-9);
    expectPrinted(result(steps, 'Least flange'), '46.2', 1e-6);
  });
});

describe('NOTCHUSE', () => {
  // A press at its plate's own size in mild steel is full, another grade in proportion to its shear strength: common
  // practice, no source. Bay A states 4 × 4 × 3/8 in.
  it.each([
    ['Mild', 4, 4, '3/8', '1.00'],
    ['A36', 4, 4, '3/8', '1.20'], // 0.75 · 80 over 50 ksi
    ['Mild', 4, 4, '3/16', '0.50'],
    ['Mild', 4, 1, '3/8', '0.50'], // a cut of 6 in over one of 12
    ['Mild', 8, 4, '3/8', '1.00'], // two bites of 4
    ['Mild', 6, 4, '3/8', '0.92'], // two bites of 3: a cut of 11 in over one of 12
  ])('%s, %d × %d × %s in: %s', (grade, width, depth, thickness, use) => {
    expectPrinted(sheet.number('NOTCHUSE', 'Bay A', width, depth, thickness, grade, shop.stamp), use);
  });

  it('says a verdict where the material is thicker than the plate states', () => {
    expect(sheet.call('NOTCHUSE', 'Bay A', 2, 2, '1/2', 'Mild', shop.stamp)).toBe('Too big');
  });
});

describe('BENDUSE', () => {
  it('Groover, V bending, 10,909 N (digits from memory), on a press of 100 kN: 10.909%', () => {
    const use = sheet.number(
      'BENDUSE',
      'Bay A',
      '44.5 mm',
      '3.2 mm',
      'tensile 450 MPa',
      groover.stamp,
      '25 mm',
    );
    expectPrinted(use, '0.10909');
  });

  it('without an opening takes the next on hand above ten times the thickness (common practice, no source)', () => {
    const call = ['BENDUSE', 'Bay A', '44.5 mm', '3.2 mm', 'tensile 450 MPa', groover.stamp] as const;
    expectPrinted(sheet.number(...call) / sheet.number(...call, '25 mm'), '0.625', 1e-9); // 25 over 40
  });

  it('EN 10025-2, S355 of 10 mm, least inside radius 20 mm (checked against a reprint): V 120 mm, over the 4 in on hand', () => {
    const call = ['BENDUSE', 'Bay A', '150 mm', '10 mm', 'S355', shop.stamp] as const;
    expect(sheet.call(...call)).toBe('No tool');
    expect(sheet.call(...call, 4)).toBeTypeOf('number');
    expect(sheet.call('BENDUSE', 'Bay A', '150 mm', '10 mm', 'S235', shop.stamp)).toBeTypeOf('number'); // 16 mm: 96
  });
});
