// Stops and times of strokes, worked out by hand from the definitions: distances over speeds. What the gaps are: common
// practice, no source.
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

const mmPerInch = 25.4;
/** Bay A in inches: gap 1/4, stroke 2; the punch goes 1/16 into the die, the stripper stands 1/8 above the work. */
const settings = settingTable({ Units: 'in', 'Punch entry': '1/16', 'Stripper gap': '1/8' });
const tools: CellValue[][] = [
  ['Press', 'Kind', 'Size', 'Height'],
  ['any', 'punch', '13/16', '4-1/2'],
  ['any', 'punch', '11/16', null],
];
const guard = 'A short stroke saves time; it is never a guard.';

function call(name: string, inputs: (string | number)[], cells: PressCells = {}, ...options: string[]) {
  const shop = shopWith(cells, { settings, tools });
  return new SheetRuntime(shop).call(name, 'Bay A', ...inputs, shop.stamp, ...options);
}
const stops = (operation: string, thickness: string, cells?: PressCells, ...hole: string[]) =>
  (call('STROKELIMITS', [operation, thickness], cells, ...hole) as CellValue[][])[0] ?? [];

describe('STROKELIMITS', () => {
  it('of a punch are the work and its gap, and the entry into the die', () => {
    // 3/8 + 1/4 = 5/8; 1/16 below the die; the stripper at 3/8 + 1/8 = 1/2.
    expect(stops('punch', '3/8')).toEqual([
      0.625,
      -0.0625,
      `Jog with this punch, then set; check again after grinding. Stripper level, 1/2 in over the die. ${guard}`,
    ]);
  });

  it('of a punch whose height is known come with the travel of the ram', () => {
    // Open height 6, punch 4-1/2: the tip stands 1-1/2 over the die; 1-1/2 - 5/8 = 7/8 and 1-1/2 + 1/16 = 1-9/16.
    const [upper, lower, note] = stops('punch', '3/8', { 'Punch open height': 6 }, '13/16');
    expect([upper, lower]).toEqual([0.625, -0.0625]);
    expect(note).toContain('The ram travels 7/8 in down to the upper stop and 1-9/16 in to the lower.');
  });

  it('are refused where the punch is too long or too short for the press', () => {
    expect(stops('punch', '3/8', { 'Punch open height': 5 }, '13/16')).toEqual([
      'Too big',
      '',
      'At the top of the stroke of Bay A the punch stands 1/2 in over the die; work and gap need 5/8 in. Use a shorter punch.',
    ]);
    expect(stops('punch', '3/8', { 'Punch open height': 7 }, '13/16')).toEqual([
      'Too big',
      '',
      'The punch of Bay A must travel 2-9/16 in to go into the die; its stroke is 2 in. Use a longer punch.',
    ]);
    expect(stops('punch', '3/8', { 'Punch stroke': '5/8' })[0]).toBe('Too big');
  });

  it('of a notcher begin just above the work', () => {
    expect(stops('notch', '1/4', { 'Notcher stroke': 2 }).slice(0, 2)).toEqual([0.375, -0.0625]);
  });

  it('of the shears end with the full stroke, of a bend with a test piece', () => {
    for (const operation of ['flat shear', 'angle shear', 'bar shear']) {
      expect(stops(operation, '1/2', { 'Shear stroke': 2 })).toEqual([
        0.625,
        'full stroke',
        `Jog, then set: the blade opens to 5/8 in, and closes with its full stroke, so that the piece drops clean. ${guard}`,
      ]);
    }
    expect(stops('bend', '1/4')).toEqual([
      'test piece',
      'test piece',
      `Set both stops with a test piece. ${guard}`,
    ]);
  });

  it('are in the units of the shop', () => {
    const shop = shopWith(
      { 'Punch working gap': '6 mm', 'Punch stroke': '50 mm' },
      { settings: settingTable({ Units: 'mm' }) },
    );
    const [row] = new SheetRuntime(shop).call(
      'STROKELIMITS',
      'Bay A',
      'punch',
      10,
      shop.stamp,
    ) as CellValue[][];
    expect(row?.slice(0, 2)).toEqual([16, -2]);
  });

  it('take a hole for a punch only', () => {
    const shop = shopWith({}, { settings, tools });
    const error = new SheetRuntime(shop).error('STROKELIMITS', 'Bay A', 'notch', '3/8', shop.stamp, '13/16');
    expect(error.message).toBe('Hole: notch has no punch for a hole. Leave it out, or write punch.');
  });
});

describe('STROKETIME', () => {
  const time = (operation: string, thickness: string, cells: PressCells) =>
    call('STROKETIME', [operation, thickness], cells);
  const speeds = { 'Approach speed': 2, 'Press speed': 0.5, 'Return speed': 3 };

  it('is each distance over its speed', () => {
    // 1/4 at 2, 3/8 + 1/16 = 7/16 at 1/2, 11/16 back at 3: 0.125 + 0.875 + 0.229 s.
    expect(time('punch', '3/8', speeds)).toBeCloseTo(0.25 / 2 + 0.4375 / 0.5 + 0.6875 / 3, 12);
    // In mm per second the same.
    const metric = {
      'Approach speed': `${2 * mmPerInch} mm/s`,
      'Press speed': '12.7 mm/s',
      'Return speed': '76.2 mm/s',
    };
    expect(time('punch', '3/8', metric)).toBeCloseTo(0.25 / 2 + 0.4375 / 0.5 + 0.6875 / 3, 9);
  });

  it('is that of the strokes per minute, by the travel', () => {
    // 24 a minute at 2 in are 2.5 s; over 11/16 in 0.859375 s.
    expect(time('punch', '3/8', { 'Strokes per minute': 24, 'Strokes per minute travel': 2 })).toBeCloseTo(
      0.859375,
      12,
    );
    // A shear goes its full stroke, 1-1/2 in: 1.875 s.
    const shear = { 'Strokes per minute': 24, 'Strokes per minute travel': 2, 'Shear stroke': 1.5 };
    expect(time('flat shear', '3/8', shear)).toBeCloseTo(1.875, 12);
  });

  it('says what it lacks, and gives no number in its place', () => {
    expect(time('punch', '3/8', {})).toBe(
      'Not checked: Approach speed, Press speed and Return speed of Bay A are not given.',
    );
    expect(time('bar shear', '3/4', speeds)).toBe('Not checked: Shear stroke of Bay A is not given.');
    expect(time('bend', '1/4', speeds)).toBe('Not checked: the stroke of a bend is set with a test piece.');
    expect(time('notch', '1/4', { ...speeds, Notcher: 'no' })).toBe('No station: Bay A has no notcher.');
    expect(time('punch', '3/8', { ...speeds, 'Punch stroke': '1/2' })).toMatch(
      /^Too big: Gap, thickness and die entry/,
    );
  });
});
