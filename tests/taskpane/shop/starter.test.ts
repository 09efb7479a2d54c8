import { describe, expect, it } from 'vitest';
import { pressItems } from '../../../src/core/press/pressItem.js';
import { readShop } from '../../../src/core/shop/readShop.js';
import { isStarter, starterPresses, starterSettings } from '../../../src/taskpane/shop/sheet/starter.js';

describe.each(['in', 'mm'] as const)('the starter shop in %s', (unit) => {
  const shop = readShop({ presses: starterPresses(), settings: starterSettings(unit) });

  it('can be read whole, with a row for every item', () => {
    expect(shop.incomplete).toEqual([]);
    expect(shop.unknownRows).toEqual([]);
    expect(shop.unit).toBe(unit);
    expect(starterPresses()).toHaveLength(pressItems.length + 1);
  });

  it('is the same machine in both units', () => {
    expect(shop.presses[0]?.values.punchThroat).toEqual({ state: 'value', value: 127 });
  });
});

describe('a press that still is the invented one', () => {
  const cells = new Map(starterPresses().map((row) => [String(row[0]), row[2] ?? null]));
  it('is known by its name and all its values', () => {
    expect(isStarter('Bay A', (item) => cells.get(item) ?? null)).toBe(true);
  });
  it('is not any more when one value differs, or under another name', () => {
    expect(isStarter('Bay A', (item) => (item === 'Punch force' ? '60' : (cells.get(item) ?? null)))).toBe(
      false,
    );
    expect(isStarter('Bay C', (item) => cells.get(item) ?? null)).toBe(false);
  });
});
