import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { bayA, type PressCells, pressTable, settingTable, shopWith } from '../../support/sampleShop.js';
import { SheetRuntime } from '../../support/sheetRuntime.js';

/** Every time that a row can take, so that nothing of it is invented. Seconds and minutes. */
const times: PressCells = {
  'Hourly rate': 90,
  'Seconds to position a hit': 10,
  'Seconds to advance a cut': 12,
  'Seconds to mark out a hole': 20,
  'Seconds to deburr': 5,
  'Seconds to stage a bar': 60,
  'Minutes per tool change': 4,
  'Minutes per holder change': 6,
  'Minutes per gauge setting': 2,
  'Strokes per minute': 30,
  'Strokes per minute travel': 2,
  'Shear stroke': 1.5,
  'Stops at once': 2,
  'Angle shear slug': 'none',
  'Angle shear leg position': 'both',
  'Back gauge reach': 36,
  'Back gauge starts the stroke': 'no',
};
const settings = {
  'First piece minutes': 3,
  'Seconds per piece mark': 4,
  'Handling classes': '50 lb 10 ft: 8; 500 lb: 60; more: 200',
  'Bar lengths': '20 ft',
  'Material price': '1 per lb',
  Markup: 0.2,
};

type Part = Record<string, CellValue>;
const clip: Part = {
  Mark: 'C1',
  Qty: 10,
  Section: 'FB 3/8x4',
  Grade: 'A36',
  Length: 12,
  Hole: '13/16',
  Holes: 2,
  Bolt: '3/4',
  Edge: '1-1/2',
  End: '1-1/2',
  'End kind': 'sheared',
  Pitch: 3,
};

/**
 * Common practice, no source: a press that has no station for a row does not run it, whatever the other does; each is
 * what ROWCHECK says of a row that names it, whose own checks are those of ROWCHECK.
 */
describe('ROWPRESS', () => {
  const shop = readShop({
    presses: pressTable({ 'Bay A': { ...bayA, ...times }, 'Bay B': { ...bayA, Punch: 'no' } }),
    settings: settingTable(settings),
  });

  it('has a row for each press, whichever the row names', () => {
    const headings = [...Object.keys(clip), 'Press'];
    const cells = [...Object.values(clip), 'Bay B'];
    const sheet = new SheetRuntime(shop);
    const result = sheet.call('ROWPRESS', [headings], [cells], shop.stamp) as CellValue[][];
    expect(result.map(([press, verdict]) => [press, verdict])).toEqual([
      ['Press', 'Verdict'],
      ['Bay A', 'OK'],
      ['Bay B', 'No station'],
    ]);
    const onA = sheet.call('ROWCHECK', [headings], [[...Object.values(clip), 'Bay A']], shop.stamp, 'use');
    expect(result[1]?.[2]).toBe((onA as CellValue[][])[0]?.[0]);
    expect(result[2]?.slice(4)).toEqual(['', '']);
  });

  it('refuses a blank row with what to give', () => {
    const sheet = new SheetRuntime(shopWith());
    const blank = Object.keys(clip).map(() => null);
    expect(() => sheet.call('ROWPRESS', [Object.keys(clip)], [blank], shopWith().stamp)).toThrow(
      /row is blank/,
    );
  });
});

/**
 * Three rows worked by hand from the coefficients above; common practice, no source. A stroke of the shear: 60 / 30 ·
 * 1.5 / 2 = 1.5 s. A stroke of the punch in 3/8 in: 1/4 in to the work, 3/8 in through it and 2 mm beyond, 60 / 30 ·
 * (0.25 + 0.375 + 0.07874) / 2 = 0.70374 s. Steel is 0.28360 lb/in³.
 */
describe('ROWCHECK minutes, cost and price', () => {
  const shop = readShop({
    presses: pressTable({ 'Bay A': { ...bayA, ...times } }),
    settings: settingTable(settings),
  });
  const call = (part: Part, item: string) => {
    const [headings, cells] = [Object.keys(part), Object.values(part)];
    return (
      new SheetRuntime(shop).call('ROWCHECK', [headings], [cells], shop.stamp, item) as CellValue[][]
    )[0]?.[0];
  };
  const shares = (part: Part) => {
    const [headings, cells] = [Object.keys(part), Object.values(part)];
    const sheet = new SheetRuntime(shop);
    const steps = sheet.call(
      'WORKING',
      'ROWCHECK',
      [headings],
      [cells],
      shop.stamp,
      'minutes',
    ) as CellValue[][];
    return Object.fromEntries(
      steps.flatMap(([title, , , seconds]) => {
        const [, share] = /^Time: (.+)$/.exec(String(title)) ?? [];
        return share === undefined ? [] : [[share, Number(seconds)]];
      }),
    );
  };

  const stroke = (60 / 30) * ((0.25 + 0.375 + 2 / 25.4) / 2);
  const rows: { name: string; part: Part; expected: Record<string, number>; pounds: number }[] = [
    {
      name: 'a clip',
      part: clip,
      expected: {
        // Punch and die, 4 min.
        'tool changes': 240,
        // The back gauge once, and the stop for each of two holes.
        'gauge settings': 3 * 120,
        'first piece': 180,
        // 20 pieces of 12 in to a bar of 20 ft; the bar is 4 · 3/8 · 240 · 0.2836 = 102 lb: the second class.
        'bars staged': 60,
        'bars lifted': 60,
        'trim cuts': 12 + 1.5,
        // Both stops stand at once: one lift of 5.1 lb.
        lifts: 10 * 8,
        cuts: 10 * (12 + 1.5),
        hits: 20 * (10 + stroke),
        deburring: (20 + 10) * 5,
        'piece marks': 10 * 4,
      },
      pounds: 10 * 1.5 * 12 * 0.2836,
    },
    {
      name: 'a base plate',
      part: {
        ...{ Mark: 'BP', Qty: 4, Section: 'PL3/8X10', Grade: 'A36', Length: 10, Hole: '13/16', Holes: 4 },
        ...{
          Bolt: 'none',
          Edge: 2,
          End: 2,
          Pitch: 6,
          Gage: 6,
          'End kind': 'sheared',
          'Edge kind': 'sheared',
        },
      },
      expected: {
        'tool changes': 240,
        // Corner holes 2 in from each side of a plate: two settings with a half turn, and the back gauge.
        'gauge settings': 3 * 120,
        'first piece': 180,
        'bars staged': 60,
        // 10 · 3/8 · 240 · 0.2836 = 255 lb
        'bars lifted': 60,
        'trim cuts': 13.5,
        // As it lies, and turned.
        lifts: 4 * 2 * 8,
        cuts: 4 * 13.5,
        hits: 16 * (10 + stroke),
        deburring: (16 + 4) * 5,
        'piece marks': 4 * 4,
      },
      pounds: 4 * 3.75 * 10 * 0.2836,
    },
    {
      name: 'the side of a mitered frame',
      part: {
        ...{ Mark: 'AF', Qty: 8, Section: 'L2X2X1/4', Grade: 'A36', Length: 48, 'Miter left': 45 },
        ...{ 'Miter right': 45, 'Long side': 'heel' },
      },
      expected: {
        'gauge settings': 120,
        'first piece': 180,
        // Five to a bar; a bar is 0.9375 · 240 · 0.2836 = 64 lb.
        'bars staged': 2 * 60,
        'bars lifted': 2 * 60,
        'trim cuts': 2 * 13.5,
        // An angle cannot be turned over, so its ends do not lie against those of its neighbors: two cuts each.
        cuts: 16 * 13.5,
        deburring: 16 * 5,
        'piece marks': 8 * 4,
      },
      pounds: 8 * 0.9375 * 48 * 0.2836,
    },
  ];

  it.each(rows)('$name, every share', ({ part, expected }) => {
    expect(call(part, 'verdict')).toMatch(/^(OK|Near limit)$/);
    const found = shares(part);
    expect(Object.keys(found)).toEqual(Object.keys(expected));
    for (const [share, seconds] of Object.entries(expected)) expect(found[share]).toBeCloseTo(seconds, 6);
  });

  it.each(rows)('$name: minutes, cost and price', ({ part, expected, pounds }) => {
    const seconds = Object.values(expected).reduce((sum, each) => sum + each, 0);
    expect(call(part, 'minutes')).toBeCloseTo(seconds / 60, 6);
    const cost = (seconds / 3600) * 90 + pounds;
    expect(Number(call(part, 'cost')) / cost).toBeCloseTo(1, 4);
    expect(Number(call(part, 'price')) / (1.2 * cost)).toBeCloseTo(1, 4);
    expect(call(part, 'basis')).not.toMatch(/Invented|Assumed until/);
  });

  it('has no time for a row that fails, and says why', () => {
    const failing = { ...clip, Length: 12, Hole: '3', Bolt: 'none' };
    expect(call(failing, 'minutes')).toBe('');
    expect(call(failing, 'basis')).toMatch(/^No time: the row is /);
  });
});

/**
 * Common practice, no source: lock out before tools are changed, jog and align, set, check a first piece, run. Stops: the
 * working gap over the work above, 2 mm into the die below; the holes of a clip 1-1/2 and 4-1/2 from its end.
 */
describe('ROWSETUP', () => {
  const shop = readShop({ presses: pressTable({ 'Bay A': { ...bayA, ...times } }) });
  const steps = (part: Part) => {
    const [headings, cells] = [Object.keys(part), Object.values(part)];
    return new SheetRuntime(shop).call('ROWSETUP', [headings], [cells], shop.stamp) as CellValue[][];
  };

  it('goes from the stock to the mark', () => {
    const rows = steps(clip);
    expect(rows[0]).toEqual([
      ...[
        'Step',
        'Station',
        'Mode',
        'Punch',
        'Die',
        'Stop',
        'Fence',
        'Turn',
        'Upper',
        'Lower',
        'Hits',
        'Note',
      ],
    ]);
    expect(rows.slice(1).map(([step]) => step)).toEqual([
      ...['Pull stock', 'Hold-down', 'Stroke', 'Back gauge', 'First piece', 'Run'],
      ...['Lock out', 'Tools', 'Jog and align the die', 'Stripper', 'Stroke', 'Setting 1', 'Setting 2'],
      ...['First piece', 'Run', 'Deburr and mark'],
    ]);
    const settingRows = rows.filter(([step]) => String(step).startsWith('Setting'));
    // The left end at the stop; Edge is from the bottom edge and the top edge is at the fence: 4 − 1-1/2.
    expect(settingRows.map(([, , , , , stop, fence]) => [stop, fence])).toEqual([
      [1.5, 2.5],
      [4.5, 2.5],
    ]);
    const [, punching] = rows.filter(([step]) => step === 'Stroke');
    expect(punching?.[8]).toBeCloseTo(0.375 + 0.25, 12);
    expect(punching?.[9]).toBeCloseTo(-2 / 25.4, 12);
    expect(rows.find(([step]) => step === 'Back gauge')?.[5]).toBe(12);
  });

  it('has reasons and no steps for a row that fails', () => {
    const rows = steps({ ...clip, Hole: '3', Bolt: 'none' });
    expect(rows).toHaveLength(2);
    expect(rows[1]?.[0]).toBe('Mind');
    expect(rows[1]?.at(-1)).toMatch(/^(Too big|Over capacity|Edge short|Check input): /);
  });

  it('sets nothing by a place that is read', () => {
    const rows = steps({ ...clip, End: null, Pitch: null });
    expect(rows.some(([step]) => String(step).startsWith('Setting'))).toBe(false);
    expect(rows[1]?.at(-1)).toMatch(/every place of Hole/);
  });
});
