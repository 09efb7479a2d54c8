import { describe, expect, it } from 'vitest';
import { sentenceInCell } from '../../../src/core/inputError.js';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { kilogramPerPound, mmPerFoot } from '../../../src/core/quantity/units.js';
import { readSettings } from '../../../src/core/shop/settings.js';

const read = (setting: string, value: CellValue, unit: 'in' | 'mm' = 'in') =>
  readSettings([
    ['Setting', 'Value'],
    ['Units', unit],
    [setting, value],
  ]);

describe('settings of time and price', () => {
  it.each([
    ['Material price', '0.85 per lb', 'in', 'materialPricePerKg', 0.85 / kilogramPerPound],
    ['Material price', 0.85, 'in', 'materialPricePerKg', 0.85 / kilogramPerPound],
    ['Material price', '95 / cwt', 'in', 'materialPricePerKg', 0.95 / kilogramPerPound],
    ['Material price', '1600 per t', 'mm', 'materialPricePerKg', 1.6],
    ['Material price', '1.600 per t', 'mm', 'materialPricePerKg', undefined],
    ['Material price', '1.600,50 per t', 'mm', 'materialPricePerKg', 1.6005],
    ['Material price', '1.600 per kg', 'mm', 'materialPricePerKg', 1.6],
    ['Minimum charge', '1.250', 'mm', 'minimumCharge', undefined],
    ['Minimum charge', '1.250', 'in', 'minimumCharge', 1.25],
    ['Minimum charge', '1250,00', 'mm', 'minimumCharge', 1250],
    ['Material price', 1.6, 'mm', 'materialPricePerKg', 1.6],
    ['Quantity breaks', '50; 1; 10', 'in', 'quantityBreaks', [1, 10, 50]],
    ['Quantity breaks', '1, 10', 'in', 'quantityBreaks', [1, 10]],
    ['Setup', 'Shared over a run', 'in', 'setup', 'shared over a run'],
    ['Currency', 'USD', 'in', 'currency', 'USD'],
    ['Currency', '€', 'mm', 'currency', '€'],
    ['Punch entry', '1/8', 'in', 'punchEntryMm', 3.175],
    ['Bar lengths', 20, 'in', 'barLengths', undefined],
    [
      'Bar lengths',
      "40'; FB 20 ft",
      'in',
      'barLengths',
      [
        { section: '', lengthMm: 40 * mmPerFoot },
        { section: 'FB', lengthMm: 20 * mmPerFoot },
      ],
    ],
    [
      'Handling classes',
      '50 lb 10 ft: 15; 500 lb: 60; more: 240',
      'in',
      'handling',
      [
        { massKg: 50 * kilogramPerPound, lengthMm: 10 * mmPerFoot, seconds: 15 },
        { massKg: 500 * kilogramPerPound, lengthMm: Number.POSITIVE_INFINITY, seconds: 60 },
        { massKg: Number.POSITIVE_INFINITY, lengthMm: Number.POSITIVE_INFINITY, seconds: 240 },
      ],
    ],
  ] as const)('%s: %s in a shop of %s', (name, value, unit, key, expected) => {
    const { settings, bad } = read(name, value, unit);
    if (expected === undefined) expect(bad[key]).toBeDefined();
    else if (typeof expected === 'number') expect(settings[key]).toBeCloseTo(expected, 12);
    else expect(settings[key]).toEqual(expected);
  });

  it.each([
    ['Material price', 'cheap', /0\.85 per lb/],
    ['Quantity breaks', '1; 2.5', /whole numbers/],
    ['Currency', 'dollars', /USD/],
    ['Handling classes', '50 lb: 15', /no class for more/],
    ['Handling classes', 'heavy: 15; more: 20', /'heavy: 15' is not a class/],
    ['Handling classes', '50 lb: soon; more: 20', /soon/],
    ['Bar lengths', '6', /too short for a bar/],
    ['Punch entry', '3 ft', /at most 25 mm/],
    ['Efficiency', 1.2, /from 0\.2 to 1/],
  ])('%s: %s is refused with what is allowed', (name, value, expected) => {
    expect(Object.values(read(name, value).bad).map(sentenceInCell).join()).toMatch(expected);
  });

  it('takes markup or margin, not both', () => {
    const both = readSettings([
      ['Setting', 'Value'],
      ['Markup', 0.2],
      ['Margin', 0.2],
    ]);
    expect(both.bad.margin?.allowed).toMatch(/Keep one/);
    expect(read('Margin', 0.2).bad).toEqual({});
  });
});
