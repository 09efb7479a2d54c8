import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import type { StrokeJob } from '../../../src/core/stroke/strokeJob.js';
import { strokeTime } from '../../../src/core/stroke/strokeTime.js';
import { Working } from '../../../src/core/working/working.js';
import { refusalText } from '../../support/refusal.js';
import { bayAInMillimeters, type PressCells, settingTable, shopWith } from '../../support/sampleShop.js';

const bay: PressCells = { ...bayAInMillimeters, 'Punch working gap': '6 mm', 'Punch stroke': '50 mm' };
const speeds = { 'Approach speed': '60 mm/s', 'Press speed': '20 mm/s', 'Return speed': '90 mm/s' };
const strokes = { 'Strokes per minute': 30, 'Strokes per minute travel': '20 mm' };

function time(job: Partial<StrokeJob>, cells: Record<string, CellValue>, working?: Working) {
  const shop = shopWith({ ...bay, ...cells }, { settings: settingTable({ Units: 'mm' }) });
  const [press] = shop.presses;
  if (!press) throw new Error('the sample has no press');
  return strokeTime(press, { operation: 'punch', thicknessMm: 10, ...job }, shop, working);
}

function seconds(job: Partial<StrokeJob>, cells: Record<string, CellValue>): number {
  const found = time(job, cells);
  if (found.is !== 'timed') throw new Error(`no time: ${JSON.stringify(found)}`);
  return found.seconds;
}

describe('the time of a stroke', () => {
  it('is approach, press and return, each over its own travel', () => {
    // 6 at 60, 10 + 2 at 20, 18 back at 90.
    expect(time({}, speeds)).toMatchObject({ is: 'timed', by: 'speeds' });
    expect(seconds({}, speeds)).toBeCloseTo(0.1 + 0.6 + 0.2, 12);
  });

  it('is that of the strokes per minute, scaled by the travel, where the speeds are not known', () => {
    // 2 s at a travel of 20; 18 of travel here.
    expect(time({}, strokes)).toMatchObject({ is: 'timed', by: 'strokes per minute' });
    expect(seconds({}, strokes)).toBeCloseTo(1.8, 12);
    expect(seconds({}, { ...strokes, 'Press speed': '20 mm/s' })).toBeCloseTo(1.8, 12);
    expect(time({}, { ...strokes, ...speeds })).toMatchObject({ by: 'speeds' });
  });

  it('of a shear is over its full stroke, all of it below the work at the press speed', () => {
    const shear = { ...speeds, 'Shear stroke': '40 mm' };
    // 1.5 at 60, 38.5 at 20, 40 back at 90.
    expect(seconds({ operation: 'flat shear' }, shear)).toBeCloseTo(1.5 / 60 + 38.5 / 20 + 40 / 90, 12);
    expect(seconds({ operation: 'bar shear' }, { ...strokes, 'Shear stroke': '40 mm' })).toBeCloseTo(4, 12);
  });

  it('of a notch is from just above the work', () => {
    expect(seconds({ operation: 'notch' }, speeds)).toBeCloseTo(1.5 / 60 + 12 / 20 + 13.5 / 90, 12);
  });

  it.each([
    [{}, ['approachSpeed', 'pressSpeed', 'returnSpeed']],
    [{ 'Press speed': '20 mm/s' }, ['approachSpeed', 'returnSpeed']],
    [{ ...speeds, 'Return speed': null }, ['returnSpeed']],
    [{ ...speeds, 'Return speed': 'none' }, ['returnSpeed']],
    [{ 'Strokes per minute': 30 }, ['strokesPerMinuteTravel']],
    [{ 'Strokes per minute travel': '20 mm' }, ['strokesPerMinute']],
    [{ 'Strokes per minute': 30, 'Press speed': '20 mm/s' }, ['approachSpeed', 'returnSpeed']],
  ])('of %j names what is lacking, and gives no number', (cells, items) => {
    expect(time({}, cells)).toEqual({ is: 'lacking', items });
  });

  it('of a shear without its stroke names that too', () => {
    const operation = 'angle shear';
    expect(time({ operation }, speeds)).toEqual({ is: 'lacking', items: ['shearStroke'] });
    expect(time({ operation }, { 'Shear stroke': 'none', ...strokes })).toEqual({
      is: 'lacking',
      items: ['shearStroke'],
    });
    expect(time({ operation }, { 'Strokes per minute': 30 })).toMatchObject({
      items: ['shearStroke', 'strokesPerMinuteTravel'],
    });
  });

  it('of what has no stops is what the stops are', () => {
    expect(time({ operation: 'bend' }, speeds)).toEqual({ is: 'test piece' });
    expect(time({}, { ...speeds, 'Punch stroke': '10 mm' })).toMatchObject({ is: 'stopped' });
    expect(time({ operation: 'notch' }, { ...speeds, Notcher: 'no' })).toMatchObject({ is: 'stopped' });
  });

  it('is refused with a speed that cannot be read', () => {
    expect(refusalText(() => time({}, { ...speeds, 'Press speed': 'fast' }))).toContain(
      "Bay A, Press speed: 'fast'",
    );
  });

  it('ends its working in the seconds, with the caution that a short stroke is no guard', () => {
    const working = new Working();
    time({}, speeds, working);
    expect(working.steps.at(-1)).toMatchObject({
      result: { kind: 'seconds' },
      cautions: ['A short stroke saves time. It is never a guard.'],
    });
  });

  it('grows with the thickness and falls with every speed', () => {
    const speed = fc.integer({ min: 5, max: 200 });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 20 }), speed, speed, speed, (t, approach, press, back) => {
        const at = (thicknessMm: number, factor: number) =>
          seconds(
            { thicknessMm },
            {
              'Approach speed': `${approach * factor} mm/s`,
              'Press speed': `${press * factor} mm/s`,
              'Return speed': `${back * factor} mm/s`,
            },
          );
        expect(at(t + 1, 1)).toBeGreaterThan(at(t, 1));
        expect(at(t, 2)).toBeCloseTo(at(t, 1) / 2, 9);
      }),
      { numRuns: 100 },
    );
  });
});
