import { describe, expect, it } from 'vitest';
import { expectPrinted } from '../../support/printed.js';
import { shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const enShop = shopWith(
  {},
  {
    settings: [
      ['Setting', 'Value'],
      ['Units', 'mm'],
      ['Edge code', 'EN'],
      ['Job spec', 'EN 1090-2 EXC2'],
    ],
  },
);
const sheet = new SheetRuntime(enShop);
const inches = (text: string) => sheet.number('LENGTH', text);
const clearance = 1 / 32;

/** The sizes of a slot, without the word that stands before those that may be counts. */
const sizes = (slot: unknown) => String(slot).replace(/^slot /, '');

describe('DIEOPENING', () => {
  it('Groover, sheet metal: a punch of 149.52 in 3.2 mm of harder steel takes a die of 150.00 mm (digits from memory)', () => {
    const [[opening] = []] = sheet.call(
      'DIEOPENING',
      149.52,
      3.2,
      'shear 310 MPa',
      'mm',
      'sheet',
    ) as number[][];
    expectPrinted(opening ?? 0, '150.00');
  });

  it.each([
    ['13/16', [13 / 16]],
    ['sq 3/4', [3 / 4]],
    ['hex 7/8', [7 / 8]],
    ['13/16x1-7/8', [13 / 16, 1 + 7 / 8]],
    ['rect 1x2', [1, 2]],
  ])('%s in 3/8 in: 1/32 in over the punch in each direction (common practice, no source)', (hole, sizes) => {
    const [opening = []] = sheet.call('DIEOPENING', hole, '3/8', 'A36') as number[][];
    expect(opening).toHaveLength(sizes.length);
    sizes.forEach((size, at) => expect(opening[at]).toBeCloseTo(size + clearance, 12));
  });

  it('EN 1090-2: at most 1.0 mm of clearance where the job is to it (from memory)', () => {
    const [[opening] = []] = sheet.call('DIEOPENING', 22, 20, 'S355', enShop.stamp) as number[][];
    expectPrinted(opening ?? 0, '23.0', 1e-6);
  });
});

describe('BOLTHOLE', () => {
  // AISC 360-22 Table J3.3, in (from memory): standard, oversize, short slot, long slot.
  it.each([
    ['1/2', '9/16', '5/8', '9/16x11/16', '9/16x1-1/4'],
    ['5/8', '11/16', '13/16', '11/16x7/8', '11/16x1-9/16'],
    ['3/4', '13/16', '15/16', '13/16x1', '13/16x1-7/8'],
    ['7/8', '15/16', '1-1/16', '15/16x1-1/8', '15/16x2-3/16'],
    ['1', '1-1/8', '1-1/4', '1-1/8x1-5/16', '1-1/8x2-1/2'],
    ['1-1/8', '1-1/4', '1-7/16', '1-1/4x1-1/2', '1-1/4x2-13/16'],
    ['1-1/4', '1-3/8', '1-9/16', '1-3/8x1-5/8', '1-3/8x3-1/8'],
  ])('AISC, %s in: %s, %s, %s, %s', (bolt, standard, oversize, short, long) => {
    expect(sheet.number('BOLTHOLE', bolt)).toBeCloseTo(inches(standard), 12);
    expect(sheet.number('BOLTHOLE', bolt, 'in', 'oversize')).toBeCloseTo(inches(oversize), 12);
    expect(sheet.call('BOLTHOLE', bolt, 'in', 'short slot')).toBe(short);
    expect(sheet.call('BOLTHOLE', bolt, 'in', 'long slot')).toBe(long);
  });

  // AISC 360-22 Table J3.3M, mm (checked against a reprint).
  it.each([
    ['M16', 18, 20, '18x22', '18x40'],
    ['M20', 22, 24, '22x26', '22x50'],
    ['M22', 24, 28, '24x30', '24x55'],
    ['M24', 27, 30, '27x32', '27x60'],
    ['M27', 30, 35, '30x37', '30x67'],
    ['M30', 33, 38, '33x40', '33x75'],
    ['M36', 39, 44, '39x46', '39x90'],
  ])('AISC, %s: %d, %d, %s, %s', (bolt, standard, oversize, short, long) => {
    expect(sheet.number('BOLTHOLE', bolt, 'mm')).toBe(standard);
    expect(sheet.number('BOLTHOLE', bolt, 'mm', 'oversize')).toBe(oversize);
    expect(sizes(sheet.call('BOLTHOLE', bolt, 'mm', 'short slot'))).toBe(short);
    expect(sizes(sheet.call('BOLTHOLE', bolt, 'mm', 'long slot'))).toBe(long);
  });

  // EN 1090-2 Table 11 (checked against a reprint).
  it.each([
    ['M12', 13, 15, '13x16', '13x30'],
    ['M16', 18, 20, '18x22', '18x40'],
    ['M20', 22, 24, '22x26', '22x50'],
    ['M24', 26, 30, '26x32', '26x60'],
    ['M27', 30, 35, '30x37', '30x67.5'],
  ])('EN, %s in an EN shop: %d, %d, %s, %s', (bolt, standard, oversize, short, long) => {
    expect(sheet.number('BOLTHOLE', bolt, enShop.stamp)).toBe(standard);
    expect(sheet.number('BOLTHOLE', bolt, enShop.stamp, 'oversize')).toBe(oversize);
    expect(sizes(sheet.call('BOLTHOLE', bolt, enShop.stamp, 'short slot'))).toBe(short);
    expect(sizes(sheet.call('BOLTHOLE', bolt, 'mm', 'long slot', 'EN'))).toBe(long);
  });

  // ISO 273 (from memory): fine, medium, coarse.
  it.each([
    ['M5', 5.3, 5.5, 5.8],
    ['M6', 6.4, 6.6, 7],
    ['M8', 8.4, 9, 10],
    ['M10', 10.5, 11, 12],
    ['M12', 13, 13.5, 14.5],
    ['M14', 15, 15.5, 16.5],
    ['M16', 17, 17.5, 18.5],
    ['M18', 19, 20, 21],
    ['M20', 21, 22, 24],
    ['M22', 23, 24, 26],
    ['M24', 25, 26, 28],
    ['M27', 28, 30, 32],
    ['M30', 31, 33, 35],
    ['M36', 37, 39, 42],
  ])('ISO 273, %s: %d, %d, %d', (bolt, fine, medium, coarse) => {
    expect(sheet.number('BOLTHOLE', bolt, 'mm', 'fine', 'ISO 273')).toBe(fine);
    expect(sheet.number('BOLTHOLE', bolt, 'mm', null, 'ISO 273')).toBe(medium);
    expect(sheet.number('BOLTHOLE', bolt, 'mm', 'coarse', 'ISO 273')).toBe(coarse);
  });

  // AISC Design Guide 1, Table 2.3, 2006 (checked against a reprint).
  it.each([
    ['3/4', '1-5/16'],
    ['7/8', '1-9/16'],
    ['1', '1-13/16'],
    ['1-1/4', '2-1/16'],
    ['1-1/2', '2-5/16'],
    ['1-3/4', '2-3/4'],
    ['2', '3-1/4'],
    ['2-1/2', '3-3/4'],
  ])('anchor rod %s in: %s', (bolt, hole) => {
    expect(sheet.number('BOLTHOLE', bolt, 'in', 'anchor rod')).toBeCloseTo(inches(hole), 12);
  });
});

describe('PITCHMIN', () => {
  it.each([
    ['AISC 360-22 J3.4, 2⅔ d (checked against a reprint)', ['3/4'], 2],
    ['AISC 360-22 J3.4, 2⅔ d (checked against a reprint)', ['7/8', 'in', 'AISC 360-22'], 7 / 3],
    ['EN 1993-1-8 Table 3.3, 2.2 d0', ['M20', enShop.stamp], 48.4],
    ['CSA S16, 2.7 d (from memory)', ['M20', 'mm', 'CSA'], 54],
    ['AS 4100, 2.5 d (from memory)', ['M20', 'mm', 'AS'], 50],
  ] as const)('%s, %j: %d', (_, given, pitch) => {
    expect(sheet.number('PITCHMIN', ...given)).toBeCloseTo(pitch, 12);
  });
});

describe('ANGLEGAGE', () => {
  // AISC Manual Table 1-7A (from memory): leg, usual gage, two lines.
  it.each([
    ['8', '4-1/2', '3', '3'],
    ['7', '4', '2-1/2', '3'],
    ['6', '3-1/2', '2-1/4', '2-1/2'],
    ['5', '3', '2', '1-3/4'],
  ])('leg %s in: %s, two lines %s and %s', (leg, usual, first, second) => {
    expect(sheet.number('ANGLEGAGE', leg)).toBeCloseTo(inches(usual), 12);
    expect(sheet.number('ANGLEGAGE', leg, 'in', 'first')).toBeCloseTo(inches(first), 12);
    expect(sheet.number('ANGLEGAGE', leg, 'in', 'second')).toBeCloseTo(inches(second), 12);
  });

  it.each([
    ['4', '2-1/2'],
    ['3-1/2', '2'],
    ['3', '1-3/4'],
    ['2-1/2', '1-3/8'],
    ['2', '1-1/8'],
    ['1-3/4', '1'],
    ['1-1/2', '7/8'],
    ['1-3/8', '7/8'],
    ['1-1/4', '3/4'],
    ['1', '5/8'],
  ])('leg %s in: %s', (leg, usual) => {
    expect(sheet.number('ANGLEGAGE', leg)).toBeCloseTo(inches(usual), 12);
  });

  // DIN 997 (from memory).
  it.each([
    [25, 15],
    [30, 17],
    [35, 18],
    [40, 22],
    [45, 25],
    [50, 30],
    [55, 30],
    [60, 35],
    [65, 35],
    [70, 40],
    [75, 40],
    [80, 45],
    [90, 50],
    [100, 55],
  ])('leg %d mm: %d', (leg, usual) => {
    expect(sheet.number('ANGLEGAGE', leg, 'mm')).toBe(usual);
  });

  // DIN 997 (from memory): legs over 100 mm have two lines.
  it.each([
    [120, 50, 80],
    [150, 60, 105],
    [200, 65, 150],
  ])('leg %d mm: lines at %d and %d from the heel', (leg, first, second) => {
    expect(sheet.number('ANGLEGAGE', leg, 'mm', 'first')).toBe(first);
    expect(first + sheet.number('ANGLEGAGE', leg, 'mm', 'second')).toBe(second);
  });
});
