import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const sheet = new SheetRuntime();

describe('DIEOPENING', () => {
  it.each([
    ['13/16', '3/8', [27 / 32]],
    ['sq 3/4', '1/8', [49 / 64]],
    ['13/16x1-7/8', '3/4', [7 / 8, 1 + 15 / 16]],
  ])(
    '%s through %s in: the hole and the clearance by steps, %j in (common practice, no source)',
    (hole, t, opening) => {
      const [sizes = []] = sheet.call('DIEOPENING', hole, t, 'A36') as number[][];
      expect(sizes).toHaveLength(opening.length);
      sizes.forEach((size, at) => expect(size).toBeCloseTo(opening[at] ?? 0, 12));
    },
  );

  it('Groover: 3.2 mm at 0.075 per side leaves 0.48 mm in all (digits from memory)', () => {
    const [[size = 0] = []] = sheet.call('DIEOPENING', 20, 3.2, 'shear 310 MPa', 'mm', 'sheet') as number[][];
    expectPrinted(size, '20.48');
  });
});

describe('BOLTHOLE', () => {
  it.each([
    ['AISC 360-22 Table J3.3 (from memory)', ['3/4', 'in'], 13 / 16],
    ['AISC 360-22 Table J3.3 (from memory)', ['1', 'in'], 1.125],
    ['AISC 360-22 Table J3.3, d + 1/8 (from memory)', ['1-1/2', 'in'], 1.625],
    ['AISC 360-22 Table J3.3 (from memory)', ['3/4', 'in', 'oversize'], 15 / 16],
    ['AISC 360-22 Table J3.3M (held against a reprint)', ['M20', 'mm'], 22],
    ['AISC 360-22 Table J3.3M (held against a reprint)', ['M24', 'mm', 'oversize'], 30],
    ['AISC Design Guide 1, Table 2.3 (held against a reprint)', ['3/4', 'in', 'anchor rod'], 1 + 5 / 16],
    ['EN 1090-2 Table 11 (held against a reprint)', ['M24', 'mm', 'standard', 'EN'], 26],
    ['EN 1090-2 Table 11 (held against a reprint)', ['M24', 'mm', 'oversize', 'EN'], 30],
    ['ISO 273, medium (from memory)', ['M20', 'mm', null, 'ISO 273'], 22],
    ['ISO 273, fine (from memory)', ['M20', 'mm', 'fine', 'ISO 273'], 21],
  ] as const)('%s: %j is %d', (_, inputs, hole) => {
    expect(sheet.number('BOLTHOLE', ...inputs)).toBeCloseTo(hole, 9);
  });

  it.each([
    ['AISC 360-22 Table J3.3 (from memory)', ['3/4', 'in', 'short slot'], '13/16x1'],
    ['AISC 360-22 Table J3.3 (from memory)', ['3/4', 'in', 'long slot'], '13/16x1-7/8'],
    ['EN 1090-2 Table 11 (held against a reprint)', ['M24', 'mm', 'short slot', 'EN'], '26x32'],
    ['EN 1090-2 Table 11 (held against a reprint)', ['M24', 'mm', 'long slot', 'EN'], '26x60'],
  ] as const)('%s: %j is the slot %s, as a hole can be written', (_, inputs, slot) => {
    expect(sheet.call('BOLTHOLE', ...inputs)).toBe(slot);
    expect(sheet.number('PUNCHFORCE', slot, '9.5 mm', 'Mild', inputs[1])).toBeGreaterThan(0);
  });
});

describe('PITCHMIN', () => {
  it.each([
    ['AISC 360-22 J3.3, 2⅔ d (held against a reprint)', ['3/4', 'in'], 2],
    ['EN 1993-1-8 Table 3.3, 2.2 × 22', ['M20', 'mm', 'EN'], 48.4],
    ['CSA S16, 2.7 d (from memory)', ['M20', 'mm', 'CSA'], 54],
    ['AS 4100, 2.5 d (from memory)', ['M20', 'mm', 'AS'], 50],
  ] as const)('%s: %j is %d', (_, inputs, pitch) => {
    expect(sheet.number('PITCHMIN', ...inputs)).toBeCloseTo(pitch, 9);
  });
});

describe('ANGLEGAGE', () => {
  it.each([
    ['AISC Manual Table 1-7A (from memory)', [3], 1.75],
    ['AISC Manual Table 1-7A (from memory)', ['3-1/2', 'in'], 2],
    ['AISC Manual Table 1-7A, g1 (from memory)', [6, 'in', 'first'], 2.25],
    ['AISC Manual Table 1-7A, g2 (from memory)', [6, 'in', 'second'], 2.5],
    ['DIN 997 (from memory)', [50, 'mm'], 30],
    ['DIN 997 (from memory)', [80, 'mm'], 45],
  ] as const)('%s: %j is %d', (_, inputs, gage) => {
    expect(sheet.number('ANGLEGAGE', ...inputs)).toBeCloseTo(gage, 9);
  });
});
