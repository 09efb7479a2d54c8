import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StrokeJob, strokeOperations } from '../../../src/core/stroke/strokeJob.js';
import { type StopsOfStroke, strokeLimits } from '../../../src/core/stroke/strokeLimits.js';
import { refusal, refusalText } from '../../support/refusal.js';
import { bayAInMillimeters, type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';

const close = 1e-9;

/** A press in mm, with a gap of 6 and a stroke of 50. */
const bay: PressCells = { ...bayAInMillimeters, 'Punch working gap': '6 mm', 'Punch stroke': '50 mm' };

function limits(job: Partial<StrokeJob>, cells: PressCells = {}, settings: Record<string, CellValue> = {}) {
  const shop = shopWith({ ...bay, ...cells }, { settings: settingTable({ Units: 'mm', ...settings }) });
  const [press] = shop.presses;
  if (!press) throw new Error('the sample has no press');
  return strokeLimits(press, { operation: 'punch', thicknessMm: 10, ...job }, shop);
}

function stops(...given: Parameters<typeof limits>): StopsOfStroke {
  const found = limits(...given);
  if (found.is !== 'stops') throw new Error(`no stops: ${JSON.stringify(found)}`);
  return found;
}

describe('the stops of a stroke', () => {
  it('of a punch are the work with its gap above the die, and the entry below it', () => {
    expect(stops({})).toEqual({ is: 'stops', upperMm: 16, lowerMm: -2, stripperMm: 11.5, notChecked: [] });
    expect(
      stops({}, { 'Punch working gap': '8 mm' }, { 'Punch entry': '3 mm', 'Stripper gap': '1 mm' }),
    ).toMatchObject({
      upperMm: 18,
      lowerMm: -3,
      stripperMm: 11,
    });
  });

  it('leave the stripper no higher than the upper stop, so that the work comes off the punch', () => {
    expect(stops({}, { 'Punch working gap': '1 mm' })).toMatchObject({ upperMm: 11, stripperMm: 11 });
  });

  it('of a notcher begin just above the work', () => {
    expect(stops({ operation: 'notch' }, { 'Notcher stroke': '60 mm' })).toEqual({
      is: 'stops',
      upperMm: 11.5,
      lowerMm: -2,
      notChecked: [],
    });
  });

  it.each(['flat shear', 'angle shear', 'bar shear'] as const)(
    'of the %s end with its full stroke',
    (operation) => {
      const found = stops({ operation }, { 'Shear stroke': '60 mm' });
      expect(found).toEqual({ is: 'stops', upperMm: 11.5, notChecked: [] });
    },
  );

  it('of a bend are found with a test piece', () => {
    expect(limits({ operation: 'bend' })).toEqual({ is: 'test piece' });
  });

  it('refuse a thickness and a height that are none', () => {
    expect(refusalText(() => limits({ thicknessMm: 0 }))).toMatch(/^Thickness: 0 is not above zero/);
    const job = { punchHeightMm: -1 };
    expect(refusal(() => limits(job, { 'Punch open height': '150 mm' })).argument).toBe('Height');
  });
});

describe('the stroke of the press', () => {
  it.each([
    ['punch', 'Punch stroke', '18 mm', '17.9 mm'],
    ['notch', 'Notcher stroke', '13.5 mm', '13.4 mm'],
    ['flat shear', 'Shear stroke', '10 mm', '9.9 mm'],
    ['angle shear', 'Shear stroke', '10 mm', '9.9 mm'],
    ['bar shear', 'Shear stroke', '10 mm', '9.9 mm'],
  ] as const)('of the %s is held on either side of what it needs', (operation, item, enough, short) => {
    expect(limits({ operation }, { [item]: enough })).toMatchObject({ is: 'stops', notChecked: [] });
    expect(limits({ operation }, { [item]: short })).toMatchObject({
      is: 'stopped',
      finding: { rule: 'press limit', verdict: 'Too big' },
    });
    expect(limits({ operation }, { [item]: 'none' })).toMatchObject({ is: 'stops', notChecked: [] });
  });

  it('is named where it is not given, and never assumed', () => {
    expect(stops({}, { 'Punch stroke': null }).notChecked).toEqual(['punchStroke']);
    expect(stops({ operation: 'notch' }).notChecked).toEqual(['notcherStroke']);
    expect(stops({ operation: 'bar shear' }).notChecked).toEqual(['shearStroke']);
    expect(stops({ punchHeightMm: 100 }, { 'Punch stroke': null }).notChecked).toEqual([
      'punchStroke',
      'punchOpenHeight',
    ]);
    expect(stops({ punchHeightMm: 100 }, { 'Punch open height': 'none' })).not.toHaveProperty('travel');
  });

  it.each(strokeOperations)('of the %s needs its station', (operation) => {
    const name = { punch: 'Punch', notch: 'Notcher', bend: 'Bend' }[operation as string];
    const item = name ?? `${operation.charAt(0).toUpperCase()}${operation.slice(1)}`;
    expect(limits({ operation }, { [item]: 'no' })).toMatchObject({ finding: { verdict: 'No station' } });
    expect(limits({ operation }, { [item]: null })).toMatchObject({ finding: { verdict: 'Not checked' } });
    expect(refusal(() => limits({ operation }, { [item]: 'perhaps' })).argument).toBe('Press');
  });

  it.each(['Punch stroke', 'Punch working gap', 'Punch open height'])(
    'is refused with a %s that cannot be read',
    (item) => {
      expect(refusalText(() => limits({ punchHeightMm: 100 }, { [item]: 'high' }))).toContain(
        `Bay A, ${item}: 'high'`,
      );
    },
  );
});

describe('a punch of a known height', () => {
  const open = { 'Punch open height': '140 mm' };

  it('gives the travel of the ram to both stops', () => {
    // Its tip stands 40 over the die: 24 down to 16 above it, 42 down to 2 below it.
    expect(stops({ punchHeightMm: 100 }, open).travel).toEqual({ upperMm: 24, lowerMm: 42 });
  });

  it('must leave room over the work, and reach the die', () => {
    expect(limits({ punchHeightMm: 124 }, open)).toMatchObject({ travel: { upperMm: 0, lowerMm: 18 } });
    expect(limits({ punchHeightMm: 124.1 }, open)).toMatchObject({
      is: 'out of travel',
      why: 'no room over the work',
    });
    expect(limits({ punchHeightMm: 92 }, open)).toMatchObject({ travel: { upperMm: 32, lowerMm: 50 } });
    expect(limits({ punchHeightMm: 91.9 }, open)).toMatchObject({
      is: 'out of travel',
      why: 'ends above the stop',
    });
  });

  it('never passes the die by more than the entry of the shop, whatever the heights are', () => {
    const mm = (least: number, most: number) =>
      fc.integer({ min: least * 100, max: most * 100 }).map((part) => part / 100);
    let travelled = 0;
    fc.assert(
      fc.property(
        fc.record({ t: mm(0.5, 40), gap: mm(0.5, 40), stripper: mm(0.5, 25), entry: mm(0.5, 25) }),
        fc.record({ open: mm(20, 400), height: mm(5, 400), stroke: mm(5, 200) }),
        ({ t, gap, stripper, entry }, { open: openMm, height, stroke }) => {
          const found = limits(
            { thicknessMm: t, punchHeightMm: height },
            {
              'Punch open height': `${openMm} mm`,
              'Punch stroke': `${stroke} mm`,
              'Punch working gap': `${gap} mm`,
            },
            { 'Punch entry': `${entry} mm`, 'Stripper gap': `${stripper} mm` },
          );
          if (found.is !== 'stops') {
            // It is refused for a reason that holds: the way is too long for the stroke, or there is no room.
            const tip = openMm - height;
            expect(
              gap + t + entry > stroke - close || tip < t + gap + close || tip + entry > stroke - close,
            ).toBe(true);
            return;
          }
          travelled += 1;
          const { travel, upperMm, lowerMm = 0, stripperMm = 0 } = found;
          const tipAtLower = openMm - height - (travel?.lowerMm ?? Infinity);
          expect(tipAtLower).toBeGreaterThanOrEqual(-entry - close);
          expect(lowerMm).toBeGreaterThanOrEqual(-entry - close);
          expect(openMm - height - (travel?.upperMm ?? Infinity)).toBeCloseTo(upperMm, 9);
          expect(travel?.upperMm).toBeGreaterThanOrEqual(-close);
          expect(travel?.lowerMm).toBeLessThanOrEqual(stroke + close);
          expect(upperMm).toBeGreaterThan(t);
          expect(stripperMm).toBeGreaterThan(t);
          expect(stripperMm).toBeLessThanOrEqual(upperMm);
        },
      ),
      { numRuns: 3000, seed: 5 },
    );
    expect(travelled).toBeGreaterThan(30);
  });
});
