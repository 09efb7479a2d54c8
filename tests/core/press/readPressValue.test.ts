import { describe, expect, it } from 'vitest';
import { sentenceInCell } from '../../../src/core/inputError.js';
import { pressItems, type PressItemKey } from '../../../src/core/press/item/pressItem.js';
import { readPressValue } from '../../../src/core/press/readPressValue.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';

function read(key: PressItemKey, cell: CellValue, unitCell: CellValue = null, unit: 'in' | 'mm' = 'in') {
  const item = pressItems.find((each) => each.key === key);
  if (!item) throw new Error(`no item ${key}`);
  return readPressValue(cell, unitCell, item, 'Bay A', unit);
}
const valueOf = (...given: Parameters<typeof read>) => {
  const value = read(...given);
  return value.state === 'value' ? value.value : value;
};
const messageOf = (...given: Parameters<typeof read>) => {
  const value = read(...given);
  return value.state === 'bad' ? sentenceInCell(value.failure) : JSON.stringify(value);
};

describe('readPressValue: states', () => {
  it.each([null, '', '  '])('a blank cell (%j) is not known', (cell) => {
    expect(read('punchThroat', cell)).toEqual({ state: 'unknown' });
  });

  it('none is no limit, but of a station it is no', () => {
    expect(read('punchThroat', ' None ')).toEqual({ state: 'none' });
    expect(read('punch', 'none')).toEqual({ state: 'value', value: 0 });
  });

  it.each([
    ['yes', 1],
    ['Y', 1],
    [true, 1],
    ['no', 0],
    ['N', 0],
    [false, 0],
  ])('a station says %j', (cell, value) => {
    expect(valueOf('punch', cell)).toBe(value);
  });
});

describe('readPressValue: units', () => {
  it('says to a cell of the table what a cell can do, not what a call can', () => {
    expect(messageOf('punchThroat', 0.3, null, 'mm')).toBe(
      'Presses, Bay A, Punch throat: 0.3 would be 0.3 mm. Allowed: 0.4 to 20000 mm. Write "0.3 in".',
    );
  });

  it('takes a bare number in the unit beside it, else in that of the shop', () => {
    expect(valueOf('punchThroat', 12)).toBeCloseTo(304.8, 9);
    expect(valueOf('punchThroat', 12, null, 'mm')).toBe(12);
    expect(valueOf('punchThroat', 12, 'mm')).toBe(12);
    expect(valueOf('punchThroat', '1-1/2', 'in', 'mm')).toBeCloseTo(38.1, 9);
    expect(valueOf('referenceShear', 345, 'MPa')).toBe(345);
    expect(valueOf('heaviestBar', 100, 'kg')).toBe(100);
    expect(valueOf('punchForce', 60, 'kN')).toBe(60_000);
  });

  it('takes the unit in the text before the one beside it', () => {
    expect(valueOf('punchThroat', '300 mm', 'in')).toBe(300);
    expect(valueOf('punchForce', '600 kN', 'US ton')).toBe(600_000);
  });

  it.each<[PressItemKey, CellValue, CellValue, RegExp]>([
    ['punchForce', 60, null, /^Presses, Bay A, Punch force: 60 has no unit\. Write US ton/],
    ['punchForce', 60, 'ton', /"ton" is three different units\. Write US ton \(2000 lbf\), tonne/],
    ['punchForce', '60 t', null, /"t" is three different units/],
    ['punchForce', 0, 'kN', /0 is out of range\. Write a force above zero/],
    ['punchThroat', 'wide', null, /'wide' is not a length/],
    ['punchThroat', -3, null, /-3 is not above zero/],
    ['punch', 'maybe', null, /^Presses, Bay A, Punch: 'maybe' is not yes or no\. Write yes or no\./],
    ['referenceShear', 'strong', null, /'strong' is not a strength/],
    ['heaviestBar', 'constructor', null, /'constructor' is not a mass/],
    ['shareToUse', 80, null, /80 is out of range\. Write a share from 0\.05 to 1, such as 0\.8\./],
    ['flatShearRake', 46, null, /46 is out of range\. Write degrees from 0 to 45\./],
  ])('keeps what cannot be read with the reason: %s %j %j', (key, cell, unitCell, message) => {
    expect(messageOf(key, cell, unitCell)).toMatch(message);
  });
});

describe('readPressValue: limits', () => {
  it.each<[PressItemKey, number, number]>([
    ['shareToUse', 0.05, 0.049],
    ['shareToUse', 1, 1.001],
    ['flatShearDullBlade', 1, 0.99],
    ['flatShearDullBlade', 3, 3.01],
    ['hourlyRate', 0, -1],
    ['crew', 100, 101],
  ])('%s may be %d but not %d', (key, inside, outside) => {
    expect(read(key, inside)).toEqual({ state: 'value', value: inside });
    expect(read(key, outside).state).toBe('bad');
  });
});

describe('the items of a press', () => {
  it('have different names and keys, and a meaning each', () => {
    expect(new Set(pressItems.map(({ name }) => name.toLowerCase())).size).toBe(pressItems.length);
    expect(new Set(pressItems.map(({ key }) => key)).size).toBe(pressItems.length);
    for (const { meaning } of pressItems) expect(meaning.length).toBeGreaterThan(5);
  });
});

describe('readPressValue: strokes, times and gauges', () => {
  it.each([
    ['approachSpeed', 2, 'in/s', 50.8],
    ['approachSpeed', '60 mm/s', null, 60],
    ['pressSpeed', '1200 mm/min', 'in/s', 20],
    ['returnSpeed', 1.5, null, 38.1],
    ['strokesPerMinute', 45, null, 45],
    ['toolChange', 4, 'min', 240],
    ['positionHit', 9, 's', 9],
    ['backGaugeStartsStroke', 'no', null, 0],
    ['angleShearLegPosition', 'Up', null, 1],
    ['angleShearLegPosition', 'both', null, 2],
    ['stopsAtOnce', 3, null, 3],
  ] as const)('%s: %s, %s', (key, cell, unit, expected) => {
    expect(valueOf(key, cell, unit)).toBeCloseTo(expected, 9);
  });

  it('refuses an hourly rate that may be thousands where people work in millimeters', () => {
    const rate = (cell: string, unit: 'in' | 'mm') => read('hourlyRate', cell, null, unit);
    expect(rate('1.085', 'mm')).toMatchObject({ state: 'bad', failure: { allowed: 'Write 1.085 or 1085.' } });
    expect(rate('85,50', 'mm')).toEqual({ state: 'value', value: 85.5 });
    expect(rate('1.085', 'in')).toEqual({ state: 'value', value: 1.085 });
  });

  it.each([
    ['angleShearLegPosition', 'sideways', /Write down, up or both/],
    ['angleShearLegPosition', 'none', /Write down, up or both/],
    ['toolChange', -1, /from 0 to 480/],
    ['approachSpeed', 'fast', /Approach speed/],
    ['strokesPerMinute', 0, /from 1 to 600/],
  ] as const)('%s refuses %s', (key, cell, expected) => {
    expect(messageOf(key, cell)).toMatch(expected);
  });
});
