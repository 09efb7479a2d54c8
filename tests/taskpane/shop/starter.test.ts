import { describe, expect, it } from 'vitest';
import { pressItems } from '../../../src/core/press/item/pressItem.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { isStarter, starterPresses, starterSettings } from '../../../src/taskpane/shop/sheet/starter.js';

describe.each(['in', 'mm'] as const)('the starter shop in %s', (unit) => {
  const shop = readShop({ presses: starterPresses(unit), settings: starterSettings(unit) });

  it('can be read whole, with a row for every item', () => {
    expect(shop.incomplete).toEqual([]);
    expect(shop.unknownRows).toEqual([]);
    expect(shop.unit).toBe(unit);
    expect(starterPresses(unit)).toHaveLength(pressItems.length + 1);
  });

  it('has round sizes of its own unit, and every length in it', () => {
    const throat = { in: 127, mm: 125 }[unit];
    expect(shop.presses[0]?.values.punchThroat).toEqual({ state: 'value', value: throat });
    const units = new Set(starterPresses(unit).map(([, cell]) => cell));
    expect(units.has({ in: 'mm', mm: 'in' }[unit])).toBe(false);
  });

  it('has largest holes that go with the punch force, by force = perimeter x thickness x shear strength, to the round numbers of a plate', () => {
    for (const { values } of shop.presses) {
      const value = (key: keyof typeof values) => {
        const held = values[key];
        return held?.state === 'value' ? held.value : Number.NaN;
      };
      const force =
        Math.PI * value('punchLargestHole') * value('punchLargestHoleThickness') * value('referenceShear');
      expect(force / value('punchForce')).toBeCloseTo(0.975, 1);
    }
  });
});

describe.each(['in', 'mm'] as const)('a press that is invented, in %s', (unit) => {
  const cells = new Map(starterPresses(unit).map((row) => [String(row[0]), row[2] ?? null]));
  const changed = (changes: Record<string, string>) => (item: string) =>
    changes[item] ?? cells.get(item) ?? null;

  it('says so in a row of its own, until that says no', () => {
    expect(isStarter('Bay A', changed({}))).toBe(true);
    expect(isStarter('Bay A', changed({ 'Punch force': '60' }))).toBe(true);
    expect(isStarter('Bay North', changed({}))).toBe(true);
    expect(isStarter('Bay A', changed({ Invented: 'no' }))).toBe(false);
  });

  it('is known by its name and most of its values in a table without that row', () => {
    const older = (changes: Record<string, string>) => changed({ Invented: '', ...changes });
    expect(isStarter('Bay A', older({}))).toBe(true);
    expect(isStarter('Bay A', older({ 'Punch force': '60' }))).toBe(true);
    expect(isStarter('Bay A', older(Object.fromEntries([...cells.keys()].map((item) => [item, '60']))))).toBe(
      false,
    );
    expect(isStarter('Bay C', older({}))).toBe(false);
  });
});
