import { describe, expect, it } from 'vitest';
import { gaugesOfShop } from '../../../src/core/setup/gaugesOfShop.js';
import { gaugeCount, gaugeSteps } from '../../../src/core/setup/gaugeSteps.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { Working } from '../../../src/core/working/working.js';
import { bayA, bayB, type PressCells, pressTable } from '../../support/sampleShop.js';

const inch = 25.4;
const holes = [
  { x: 2 * inch, y: 2 * inch },
  { x: 30 * inch, y: 9 * inch },
];
const plate = { lengthMm: 40 * inch, widthMm: 18 * inch, holes, turns: 'none' as const };
const pressesOf = (presses: Record<string, PressCells>) => readShop({ presses: pressTable(presses) }).presses;

describe('the gauges of a shop', () => {
  it('are those of the press that reaches most holes', () => {
    const found = gaugesOfShop(plate, pressesOf({ 'Bay B': bayB, 'Bay A': bayA }));
    // The throat of Bay B is 8 in, of Bay A 12 in.
    expect(found).toMatchObject({ press: 'Bay A', marked: [] });
    expect(gaugesOfShop(plate, pressesOf({ 'Bay B': bayB })).marked).toEqual([1]);
  });

  it('are those of the first press, where several reach all', () => {
    expect(gaugesOfShop(plate, pressesOf({ 'Bay C': bayA, 'Bay A': bayA })).press).toBe('Bay C');
  });

  it('leave out a press that does not punch, and have no limits where none does', () => {
    const sawOnly = { ...bayA, Punch: 'no' };
    expect(gaugesOfShop(plate, pressesOf({ 'Bay A': sawOnly, 'Bay B': bayB })).press).toBe('Bay B');
    const found = gaugesOfShop({ ...plate, widthMm: 100 * inch }, pressesOf({ 'Bay A': sawOnly }));
    expect(found.press).toBeUndefined();
    expect(found.settings).toHaveLength(2);
  });

  it('name what is not known of the press, and hold nothing against it', () => {
    const known = { ...bayA, 'Fence least reach': 'none', 'Left stop greatest reach': 24 };
    const found = gaugesOfShop(plate, pressesOf({ 'Bay A': known }));
    expect(found.unknown).toEqual(['fenceGreatest', 'leftStopLeast', 'rightStopLeast', 'rightStopGreatest']);
    // 30 in from the left end is out of reach of the left stop, 10 in from the right end is not of the right one.
    expect(found.settings.map(({ stop, stopMm }) => [stop, stopMm / inch])).toEqual([
      ['left', 2],
      ['right', 10],
    ]);
  });
});

describe('the steps of gauge settings', () => {
  const stepsOf = (found: ReturnType<typeof gaugesOfShop>, turns: 'none' | 'half' | 'flip') => {
    const working = new Working();
    gaugeSteps(found, { ...plate, turns, holes: 2 }, working);
    return working.steps;
  };

  it('end in the number of settings, in words where holes are left', () => {
    const all = gaugesOfShop(plate, pressesOf({ 'Bay A': bayA }));
    expect(stepsOf(all, 'none').at(-1)?.result).toMatchObject({ kind: 'count', value: 2 });
    const some = gaugesOfShop(plate, pressesOf({ 'Bay B': bayB }));
    expect(gaugeCount(some)).toEqual({ kind: 'text', value: '1 setting and 1 hole to mark out by hand' });
    expect(stepsOf(some, 'none').at(-1)?.result.value).toBe(gaugeCount(some).value);
  });

  it('caution where tolerances enter, and where burrs are on both faces', () => {
    const found = gaugesOfShop(plate, []);
    expect(stepsOf(found, 'none')[0]?.cautions).toEqual([]);
    expect(stepsOf(found, 'half')[0]?.cautions?.[0]).toMatch(
      /tolerances of length and width enter.*turns "none"/,
    );
    expect(stepsOf(found, 'flip')[0]?.cautions?.[1]).toBe('A flipped plate has burrs on both faces.');
    const bothStops = { ...bayA, 'Left stop greatest reach': 24 };
    const both = gaugesOfShop(plate, pressesOf({ 'Bay A': bothStops }));
    expect(stepsOf(both, 'none')[1]?.cautions?.at(-1)).toMatch(/^The right stop holds the right end/);
  });
});
