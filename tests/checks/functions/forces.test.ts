import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();
/** A US ton is 2000 lbf; a kip 1000 lbf. */
const usTonPerKip = 0.5;
const tauMild = 50; // ksi: the rule of thumb's shear strength of mild steel, common practice

describe('PUNCHFORCE', () => {
  it('Groover, Fundamentals of Modern Manufacturing, blanking: Ø150, 3.2 mm, 310 MPa is 467,469 N (digits from memory)', () => {
    expectPrinted(1000 * sheet.number('PUNCHFORCE', 'Ø150', 3.2, 'shear 310 MPa', 'mm'), '467,469');
  });

  it('Kalpakjian & Schmid, punching: Ø25, 3.2 mm, 0.7 × 1000 MPa is about 176 kN (digits from memory)', () => {
    expectPrinted(sheet.number('PUNCHFORCE', 25, 3.2, 'shear 700 MPa', 'mm'), '176');
  });

  it.each([
    ['13/16', '3/8', 80 * (13 / 16) * (3 / 8)],
    ['1', '1/2', 40],
    ['9/16', '1/4', 11.25],
  ])(
    'rule of thumb, mild steel, US tons = 80 · d · t: %s through %s (common practice, no source)',
    (d, t, tons) => {
      const force = sheet.number('PUNCHFORCE', d, t, 'Mild');
      // The rule rounds π · 25 = 78.54 up to 80.
      expectPrinted((force / tons) * 80, '78.54');
    },
  );

  it.each([
    ['sq 1', 4 * 1],
    ['rect 1x2', 2 * (1 + 2)],
    ['13/16x1-7/8', Math.PI * 0.8125 + 2 * (1.875 - 0.8125)],
    ['hex 1', 6 / Math.sqrt(3)], // six sides of s / √3
    ['4 @ 13/16', 4 * Math.PI * 0.8125],
  ])('cut length of %s times 1/2 in times 50 ksi (plane geometry)', (hole, perimeterIn) => {
    const tons = perimeterIn * 0.5 * tauMild * usTonPerKip;
    expect(sheet.number('PUNCHFORCE', hole, '1/2', 'Mild')).toBeCloseTo(tons, 10);
  });

  it('ASTM A36 tops out at 80 ksi; three quarters of it shear: 60 ksi (share: common practice, no source)', () => {
    const tons = Math.PI * 0.8125 * 0.375 * 60 * usTonPerKip;
    expect(sheet.number('PUNCHFORCE', '13/16', '3/8', 'A36')).toBeCloseTo(tons, 10);
  });

  it('the energy p · t · τ · k · t over a stroke of s: nothing up to s = 0.38 t, half from 0.76 t on, never less (0.38 from memory)', () => {
    const flat = sheet.number('PUNCHFORCE', 25, 10, 'Mild', 'mm');
    expect(sheet.number('PUNCHFORCE', 25, 10, 'Mild', 'mm', 1, 3.8)).toBeCloseTo(flat, 9);
    expect(sheet.number('PUNCHFORCE', 25, 10, 'Mild', 'mm', 1, 5)).toBeCloseTo((flat * 3.8) / 5, 9);
    expect(sheet.number('PUNCHFORCE', 25, 10, 'Mild', 'mm', 1, 7.6)).toBeCloseTo(flat / 2, 9);
    expect(sheet.number('PUNCHFORCE', 25, 10, 'Mild', 'mm', 1, 9)).toBeCloseTo(flat / 2, 9);
  });
});

/** Force under a raked blade by adding up thin slices of the cut: τ · (t − x · tan φ) as far as the blade is in. */
function slicedForceUsTon(widthIn: number, thicknessIn: number, rakeDegree: number): number {
  const slope = Math.tan((rakeDegree * Math.PI) / 180);
  const slices = 200_000;
  let area = 0;
  for (let at = 0; at < slices; at += 1) {
    const x = ((at + 0.5) / slices) * widthIn;
    area += (Math.max(0, thicknessIn - x * slope) * widthIn) / slices;
  }
  return area * tauMild * usTonPerKip;
}

describe('SHEARFORCE', () => {
  it('a square blade cuts the whole section at once: 1/2 × 4 in at 50 ksi is 100 kip, 50 US tons', () => {
    expectPrinted(sheet.number('SHEARFORCE', 'FB 1/2x4', 'Mild'), '50.0000000');
  });

  it.each([
    ['FB 1/2x4', 4, 0.5, 4],
    ['PL 1/2x12', 12, 0.5, 4],
    ['PL 3/16x6', 6, 3 / 16, 2],
    ['FB 3/4x8', 8, 0.75, 5.355],
  ])(
    '%s under a rake equals the sum of thin slices of the cut (numerical integration)',
    (section, w, t, rake) => {
      const force = sheet.number('SHEARFORCE', section, 'Mild', 'in', rake);
      expect(force / slicedForceUsTon(w, t, rake)).toBeCloseTo(1, 6);
    },
  );

  it.each([
    ['L50x50x5', '4.80'],
    ['L80x80x8', '12.3'],
    ['L100x100x10', '19.2'],
    ['L150x150x15', '43.0'],
  ])('%s: the area of EN 10056-1, %s cm², times the shear strength (digits from memory)', (section, cm2) => {
    const areaCm2 = sheet.number('SHEARFORCE', section, 'shear 100 MPa', 'mm') / 10; // kN at 100 MPa is 0.1 cm²
    expectPrinted(areaCm2, cm2);
  });

  it('a miter of 45° cuts √2 times the section (plane geometry)', () => {
    const square = sheet.number('SHEARFORCE', 'L3X3X1/4', 'Mild');
    expect(sheet.number('SHEARFORCE', 'L3X3X1/4', 'Mild', 'in', 0, 45)).toBeCloseTo(square * Math.SQRT2, 9);
    const flat = sheet.number('SHEARFORCE', 'FB 1/2x4', 'Mild');
    expect(sheet.number('SHEARFORCE', 'FB 1/2x4', 'Mild', null, null, 45)).toBeCloseTo(flat * Math.SQRT2, 9);
  });

  it('a round bar of 1 in is cut over π/4 in² (plane geometry)', () => {
    expect(sheet.number('SHEARFORCE', 'RB 1', 'Mild')).toBeCloseTo((Math.PI / 4) * 25, 10);
  });
});
