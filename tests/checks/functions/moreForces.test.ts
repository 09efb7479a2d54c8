import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { type PressCells, shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();
const tauMild = 50; // ksi: the rule of thumb's shear strength of mild steel, common practice
const usTonPerKip = 0.5;

describe('STRIPFORCE', () => {
  it('15 % of the punching force, which the rule of thumb puts at 78.54 · d · t US tons (common practice, no source)', () => {
    expectPrinted(sheet.number('STRIPFORCE', '1', '1/2', 'Mild'), '5.89'); // 0.15 · 39.27
  });
});

describe('NOTCHFORCE', () => {
  it.each([
    ['edge', 2 * 1.5 + 2],
    ['corner', 1.5 + 2],
    ['vee', 2 * Math.sqrt(1.5 ** 2 + 1)],
  ])('%s: cut length %d in times 1/4 in times 50 ksi (plane geometry)', (where, cut) => {
    const tons = cut * 0.25 * tauMild * usTonPerKip;
    expect(sheet.number('NOTCHFORCE', 2, '1-1/2', '1/4', 'Mild', 'in', where)).toBeCloseTo(tons, 10);
  });
});

describe('BENDFORCE', () => {
  it('Groover, V bending: 450 MPa, 44.5 mm, 3.2 mm, V 25, K 1.33 is 10,909 N (digits from memory)', () => {
    const kilonewton = sheet.number('BENDFORCE', 44.5, 3.2, 'tensile 450 MPa', 'mm', 25);
    expectPrinted(1000 * kilonewton, '10,909');
  });

  it('opens the V ten times the thickness where none is given (common practice, no source)', () => {
    const given = sheet.number('BENDFORCE', 12, '1/4', 'A36', 'in', '2-1/2');
    expect(sheet.number('BENDFORCE', 12, '1/4', 'A36')).toBeCloseTo(given, 10);
  });
});

function use(name: string, inputs: (string | number)[], cells: PressCells = {}, option?: number) {
  const shop = shopWith(cells);
  return new SheetRuntime(shop).call(name, 'Bay A', ...inputs, shop.stamp, option ?? null);
}

describe('NOTCHUSE', () => {
  it("the plate's own notch in mild steel reads exactly 1, in A36 60 / 50 of it (common practice, no source)", () => {
    expect(use('NOTCHUSE', [4, 4, '3/8', 'Mild'])).toBe(1);
    expect(use('NOTCHUSE', [4, 4, '3/8', 'A36'])).toBe(1.2);
  });

  it('a thinner, smaller notch takes its share of cut and thickness', () => {
    // (2 · 1 + 2) · 1/4 over (2 · 4 + 4) · 3/8
    expect(use('NOTCHUSE', [2, 1, '1/4', 'Mild'])).toBeCloseTo((4 * 0.25) / (12 * 0.375), 12);
  });

  it('is stopped by thickness, a missing station and a blank', () => {
    expect(use('NOTCHUSE', [2, 2, '7/16', 'Mild'])).toBe('Too big');
    expect(use('NOTCHUSE', [2, 2, '1/4', 'Mild'], { Notcher: 'no' })).toBe('No station');
    for (const item of ['Notcher', 'Notcher width', 'Notcher depth', 'Notcher thickness'])
      expect(use('NOTCHUSE', [2, 2, '1/4', 'Mild'], { [item]: null }), item).toBe('Not checked');
  });
});

describe('BENDUSE', () => {
  it('is the bending force over the punch force, in the smallest V that is wide enough: 10 · 1/4 in takes the 3 in one', () => {
    // 1.33 · 80 ksi · 12 in · (1/4 in)² / 3 in is 26.6 kip, 13.3 US tons, of 60 (Groover, from memory)
    expect(use('BENDUSE', [12, '1/4', 'A36'])).toBeCloseTo((1.33 * 80 * 12 * 0.0625) / 3 / 2 / 60, 12);
  });

  it('is stopped by length, a V that is not on hand, a missing station and a blank', () => {
    expect(use('BENDUSE', [18, '1/4', 'A36'])).toBeTypeOf('number');
    expect(use('BENDUSE', ['18-1/16', '1/4', 'A36'])).toBe('Too big');
    expect(use('BENDUSE', [12, '1/2', 'A36'])).toBe('No tool');
    expect(use('BENDUSE', [12, '1/4', 'A36'], { Bend: 'no' })).toBe('No station');
    for (const item of ['Bend', 'Bend length', 'Bend V openings', 'Punch force'])
      expect(use('BENDUSE', [12, '1/4', 'A36'], { [item]: null }), item).toBe('Not checked');
  });
});
