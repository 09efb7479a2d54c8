import { describe, expect, it } from 'vitest';
import { boltHole, type HoleCode, type HoleFit } from '../../src/core/rule/boltHole.js';
import { readBolt } from '../../src/core/rule/boltSize.js';
import { readLength } from '../../src/core/quantity/readLength.js';

/** The printed digits are read by the length reader and compared to 0.001 mm: the tables have no rounding. */
function expectHole(size: string, fit: HoleFit, code: HoleCode, printed: string, unit: 'in' | 'mm') {
  const hole = boltHole({ bolt: readBolt(size, 'Bolt', unit), fit, code });
  const [width = '', length] = printed.split('x');
  expect(hole.widthMm).toBeCloseTo(readLength(width, 'Printed', unit), 3);
  if (length === undefined) expect(hole.lengthMm).toBeUndefined();
  else expect(hole.lengthMm).toBeCloseTo(readLength(length, 'Printed', unit), 3);
}

describe('AISC 360-22 Table J3.3, in (from memory): standard, oversize, short slot, long slot', () => {
  it.each([
    ['1/2', '9/16', '5/8', '9/16x11/16', '9/16x1-1/4'],
    ['5/8', '11/16', '13/16', '11/16x7/8', '11/16x1-9/16'],
    ['3/4', '13/16', '15/16', '13/16x1', '13/16x1-7/8'],
    ['7/8', '15/16', '1-1/16', '15/16x1-1/8', '15/16x2-3/16'],
    ['1', '1-1/8', '1-1/4', '1-1/8x1-5/16', '1-1/8x2-1/2'],
    // d + 1/8, d + 5/16, (d + 1/8) × (d + 3/8), (d + 1/8) × 2.5 d
    ['1-1/8', '1-1/4', '1-7/16', '1-1/4x1-1/2', '1-1/4x2.8125'],
    ['1-1/4', '1-3/8', '1-9/16', '1-3/8x1-5/8', '1-3/8x3.125'],
    ['1-1/2', '1-5/8', '1-13/16', '1-5/8x1-7/8', '1-5/8x3.75'],
  ])('%s: %s, %s, %s, %s', (size, standard, oversize, shortSlot, longSlot) => {
    expectHole(size, 'standard', 'AISC', standard, 'in');
    expectHole(size, 'oversize', 'AISC', oversize, 'in');
    expectHole(size, 'short slot', 'AISC', shortSlot, 'in');
    expectHole(size, 'long slot', 'AISC', longSlot, 'in');
  });
});

describe('AISC 360-22 Table J3.3M, mm (checked against a reprint): standard, oversize, short slot, long slot', () => {
  it.each([
    ['M16', '18', '20', '18x22', '18x40'],
    ['M20', '22', '24', '22x26', '22x50'],
    ['M22', '24', '28', '24x30', '24x55'],
    ['M24', '27', '30', '27x32', '27x60'],
    ['M27', '30', '35', '30x37', '30x67'],
    ['M30', '33', '38', '33x40', '33x75'],
    // d + 3, d + 8, (d + 3) × (d + 10), (d + 3) × 2.5 d
    ['M36', '39', '44', '39x46', '39x90'],
    ['M42', '45', '50', '45x52', '45x105'],
  ])('%s: %s, %s, %s, %s', (size, standard, oversize, shortSlot, longSlot) => {
    expectHole(size, 'standard', 'AISC', standard, 'mm');
    expectHole(size, 'oversize', 'AISC', oversize, 'mm');
    expectHole(size, 'short slot', 'AISC', shortSlot, 'mm');
    expectHole(size, 'long slot', 'AISC', longSlot, 'mm');
  });
});

describe('AISC Design Guide 1, second edition 2006, Table 2.3, in (checked against a reprint): anchor rods', () => {
  it.each([
    ['3/4', '1-5/16'],
    ['7/8', '1-9/16'],
    ['1', '1-13/16'],
    ['1-1/4', '2-1/16'],
    ['1-1/2', '2-5/16'],
    ['1-3/4', '2-3/4'],
    ['2', '3-1/4'],
    ['2-1/2', '3-3/4'],
  ])('%s: %s', (size, hole) => {
    expectHole(size, 'anchor rod', 'AISC', hole, 'in');
  });
});

describe('EN 1090-2 Table 11, mm (checked against a reprint): normal, oversize, short slot, long slot', () => {
  it.each([
    ['M12', '13', '15', '13x16', '13x30'],
    ['M14', '15', undefined, '15x18', '15x35'],
    ['M16', '18', '20', '18x22', '18x40'],
    ['M18', '20', '22', '20x24', '20x45'],
    ['M20', '22', '24', '22x26', '22x50'],
    ['M22', '24', '26', '24x28', '24x55'],
    ['M24', '26', '30', '26x32', '26x60'],
    ['M27', '30', '35', '30x37', '30x67.5'],
    ['M30', '33', '38', '33x40', '33x75'],
    ['M36', '39', '44', '39x46', '39x90'],
  ])('%s: %s, %s, %s, %s', (size, normal, oversize, shortSlot, longSlot) => {
    expectHole(size, 'standard', 'EN', normal, 'mm');
    if (oversize !== undefined) expectHole(size, 'oversize', 'EN', oversize, 'mm');
    expectHole(size, 'short slot', 'EN', shortSlot, 'mm');
    expectHole(size, 'long slot', 'EN', longSlot, 'mm');
  });

  it('M14 oversize: 17 (from memory)', () => {
    expectHole('M14', 'oversize', 'EN', '17', 'mm');
  });
});

describe('ISO 273, mm (from memory): fine, medium, coarse', () => {
  it.each([
    ['M5', '5.3', '5.5', '5.8'],
    ['M6', '6.4', '6.6', '7'],
    ['M8', '8.4', '9', '10'],
    ['M10', '10.5', '11', '12'],
    ['M12', '13', '13.5', '14.5'],
    ['M14', '15', '15.5', '16.5'],
    ['M16', '17', '17.5', '18.5'],
    ['M18', '19', '20', '21'],
    ['M20', '21', '22', '24'],
    ['M22', '23', '24', '26'],
    ['M24', '25', '26', '28'],
    ['M27', '28', '30', '32'],
    ['M30', '31', '33', '35'],
    ['M33', '34', '36', '38'],
    ['M36', '37', '39', '42'],
    ['M39', '40', '42', '45'],
    ['M42', '43', '45', '48'],
    ['M48', '50', '52', '56'],
    ['M56', '58', '62', '66'],
    ['M64', '66', '70', '74'],
  ])('%s: %s, %s, %s', (size, fine, medium, coarse) => {
    expectHole(size, 'fine', 'ISO 273', fine, 'mm');
    expectHole(size, 'medium', 'ISO 273', medium, 'mm');
    expectHole(size, 'coarse', 'ISO 273', coarse, 'mm');
  });
});
