import { describe, expect, it } from 'vitest';
import { checkedRow } from '../../support/checkedRow.js';
import { bayA, type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

/** What the press of the samples says, some of its cells changed. */
function use(name: string, inputs: string[], cells: PressCells = {}, option?: number) {
  const shop = shopWith(cells);
  return new SheetRuntime(shop).call(name, 'Bay A', ...inputs, shop.stamp, option ?? null);
}
const punchUse = (hole: string, thickness: string, grade: string, cells?: PressCells) =>
  use('PUNCHUSE', [hole, thickness, grade], cells);
const shearUse = (section: string, grade: string, cells?: PressCells, miter?: number) =>
  use('SHEARUSE', [section, grade], cells, miter);

// The plate: Ø1-1/2 through 1/2 in at 50 ksi is π · 1.5 · 0.5 · 25 = 58.905 US tons, under the rated 60.
const plateTons = Math.PI * 1.5 * 0.5 * 25;

describe('PUNCHUSE', () => {
  it('the plate of a press stands for mild steel: at its own hole it reads exactly 1 (common practice, no source)', () => {
    expect(punchUse('1-1/2', '1/2', 'Mild')).toBe(1);
  });

  it('another grade takes its own strength: A36 at 60 ksi over 50 is 1.2 of the plate', () => {
    expect(punchUse('1-1/2', '1/2', 'A36')).toBe(1.2);
  });

  it('the smaller of rated force and plate decides', () => {
    // Ø1 × 3/8 at 50 ksi: π · 0.375 · 25 = 29.452 US tons, of 60, of 58.905, of 25.
    const tons = Math.PI * 0.375 * 25;
    expect(punchUse('1', '3/8', 'Mild')).toBeCloseTo(tons / plateTons, 12);
    const none = { 'Punch largest hole': 'none', 'Punch largest hole thickness': 'none' };
    expect(punchUse('1', '3/8', 'Mild', none)).toBeCloseTo(tons / 60, 12);
    expect(punchUse('1', '3/8', 'Mild', { 'Punch force': 25 })).toBeCloseTo(tons / 25, 12);
  });

  it('the stroke takes the punch as far into the die as the shop says', () => {
    // 1/4 in gap + 1/2 in of work + 5 mm into the die = 0.9469 in (common practice, no source)
    const word = (stroke: string) => {
      const settings = settingTable({ Units: 'in', 'Punch entry': '5 mm' });
      const shop = shopWith({ 'Punch stroke': stroke }, { settings });
      const part = { Section: 'FB 1/2x6', Grade: 'Mild', Length: 12, Hole: 1, Edge: 3, End: 3, Bolt: 'none' };
      return [
        new SheetRuntime(shop).call('PUNCHUSE', 'Bay A', '1', '1/2', 'Mild', shop.stamp),
        checkedRow({ ...part, Press: 'Bay A' }, shop).verdict,
      ];
    };
    expect(word('0.94')).toEqual(['Too big', 'Too big']);
    expect(word('0.95')).toEqual([expect.any(Number), 'OK']);
  });

  it.each([
    [
      'largest hole',
      'Punch largest hole',
      ['1-1/2', '1-17/32'],
      (d: string) => punchUse(d, '1/4', 'Mild'),
      'Too big',
    ],
    // 1/4 in gap + 1/2 in of work + 2 mm into the die = 0.8287 in (common practice, no source)
    [
      'stroke',
      'Punch stroke',
      ['0.83', '0.82'],
      (s: string) => punchUse('1', '1/2', 'Mild', { 'Punch stroke': s }),
      'Too big',
    ],
    // A36: the thickness itself (common practice, no source)
    ['smallest hole', '', ['3/4', '23/32'], (d: string) => punchUse(d, '3/4', 'A36'), 'Hole too small'],
    [
      'station',
      'Punch',
      ['yes', 'no'],
      (s: string) => punchUse('1', '1/2', 'Mild', { Punch: s }),
      'No station',
    ],
  ])('on either side of the %s', (_, __, [inside = '', outside = ''], at, word) => {
    expect(at(inside)).toBeTypeOf('number');
    expect(at(outside)).toBe(word);
  });

  it.each(['Punch', 'Punch force', 'Punch largest hole', 'Punch stroke'])(
    'a blank %s is not checked',
    (item) => {
      expect(punchUse('13/16', '3/8', 'A36', { [item]: null })).toBe('Not checked');
    },
  );

  it('no limit at all is no share of anything', () => {
    const none = {
      'Punch force': 'none',
      'Punch largest hole': 'none',
      'Punch largest hole thickness': 'none',
    };
    expect(punchUse('13/16', '3/8', 'A36', none)).toBe(0);
  });
});

describe('SHEARUSE', () => {
  it('blades for less than the grade may have stop the cut: A36 comes with up to 80 ksi (ASTM A36)', () => {
    const blades = (limit: string) => ({ 'Blade material limit': limit });
    expect(shearUse('FB 3/8x4', 'A36', blades('79 ksi'))).toBe('Over capacity');
    expect(shearUse('FB 3/8x4', 'A36', blades('80 ksi'))).toBe(shearUse('FB 3/8x4', 'A36'));
    expect(shearUse('C6X8.2', 'A36', blades('40 ksi'))).toBe('Off press');
  });

  it.each([
    ['FB 1/2x12', 0],
    ['FB 3/4x8', 0],
    ['L5X5X1/2', 0],
    ['L3X3X3/8', 45],
    ['RB 1-1/2', 0],
    ['SQ 1-1/4', 0],
  ])(
    '%s at %d°, the size on the plate, in mild steel reads exactly 1 (common practice, no source)',
    (section, miter) => {
      expect(shearUse(section, 'Mild', {}, miter)).toBe(1);
    },
  );

  it('another grade takes its own strength: A36 at 60 ksi over 50 is 1.2', () => {
    for (const section of ['FB 3/4x8', 'L5X5X1/2', 'RB 1-1/2']) expect(shearUse(section, 'A36')).toBe(1.2);
  });

  it('a smaller part takes its share of the cut area', () => {
    // Squares: (1 / 1.25)² = 0.64. Sharp angles: t · (a + b − t), 1/4 · 5.75 over 1/2 · 9.5.
    expect(shearUse('SQ 1', 'Mild')).toBeCloseTo(0.64, 12);
    expect(shearUse('L3X3X1/4', 'Mild')).toBeCloseTo(1.4375 / 4.75, 12);
    // A miter of 30° is held to the size at 45°: cos 45° / cos 30°.
    expect(shearUse('L3X3X3/8', 'Mild', {}, 30)).toBeCloseTo(Math.SQRT1_2 / Math.cos(Math.PI / 6), 12);
  });

  it('the two flat bars on the plate are steps: the thicker one up to its width, then the thinner', () => {
    expect(shearUse('FB 5/8x8', 'Mild')).toBeTypeOf('number');
    expect(shearUse('FB 5/8x8-1/16', 'Mild')).toBe('Too big');
    expect(shearUse('FB 1/2x8-1/16', 'Mild')).toBeTypeOf('number');
  });

  it('a mitered flat is as wide as its cut: 4 in at 45° is 5.66 in (plane geometry)', () => {
    const blade = (length: string) => shearUse('FB 1/4x4', 'Mild', { 'Flat shear blade length': length }, 45);
    expect(blade('5.66')).toBeTypeOf('number');
    expect(blade('5.65')).toBe('Too big');
  });

  it.each([
    ['FB 1/2x12', 'FB 1/2x12-1/16', 0],
    ['FB 3/4x8', 'FB 13/16x8', 0],
    ['L5X5X1/2', 'L5-1/8X5X1/2', 0],
    ['L5X5X1/2', 'L5X5X9/16', 0],
    ['L3X3X3/8', 'L3-1/2X3X3/8', 45],
    ['L3X3X3/8', 'L3X3X7/16', 45],
    ['RB 1-1/2', 'RB 1-9/16', 0],
    ['SQ 1-1/4', 'SQ 1-5/16', 0],
  ])('%s runs and %s is too big at %d°, also in a weak grade', (inside, outside, miter) => {
    expect(shearUse(inside, 'Mild', {}, miter)).toBeTypeOf('number');
    expect(shearUse(outside, 'shear 20 ksi', {}, miter)).toBe('Too big');
  });

  it.each([
    ['FB 1/4x2', 'Flat shear'],
    ['L2X2X1/4', 'Angle shear'],
    ['RB 1', 'Bar shear'],
  ])('%s needs the %s', (section, station) => {
    expect(shearUse(section, 'Mild', { [station]: 'no' })).toBe('No station');
    expect(shearUse(section, 'Mild', { [station]: null })).toBe('Not checked');
  });

  it('a channel is sawn, and shaped blades cut square only', () => {
    expect(shearUse('C8X11.5', 'A36')).toBe('Off press');
    expect(shearUse('RB 1', 'A36', {}, 30)).toBe('No station');
  });

  it('a size the plate does not limit is no share', () => {
    expect(shearUse('RB 1', 'A36', { 'Bar shear round': 'none' })).toBe(0);
  });

  it('says why a cell of the press cannot be read', () => {
    const shop = shopWith({ 'Bar shear round': 'big' });
    const { message } = new SheetRuntime(shop).error('SHEARUSE', 'Bay A', 'RB 1', 'A36', shop.stamp);
    expect(message).toBe(
      "Press: Presses, Bay A, Bar shear round: 'big' is not a length. Write 3/8, 9.5 mm or 0.375.",
    );
  });
});

it('the samples have the limits these checks are worked out with', () => {
  expect(bayA).toMatchObject({
    'Punch force': 60,
    'Punch largest hole': '1-1/2',
    'Reference shear strength': 50,
  });
});
