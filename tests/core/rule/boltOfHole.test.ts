import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { boltHole } from '../../../src/core/rule/boltHole.js';
import { boltOfHole } from '../../../src/core/rule/boltOfHole.js';
import { settingTable, bayAInMillimeters, shopWith } from '../../support/sampleShop.js';
import { checkedRow } from '../../support/checkedRow.js';

describe('the bolt whose standard hole a diameter is', () => {
  it.each([
    [18, 'mm', 'EN', 'M16'],
    [13, 'mm', 'EN', 'M12'],
    [12, 'mm', 'EN', undefined],
    [14.2875, 'in', 'EN', undefined],
    [14.2875, 'in', 'AISC', '1/2 in'],
    [18, 'mm', 'AISC', 'M16'],
  ] as const)('%s mm, bolts in %s by %s: %s', (diameterMm, unit, code, name) => {
    expect(boltOfHole({ diameterMm, unit, code })?.name).toBe(name);
  });

  it('has that hole, whatever the diameter, and none is refused', () => {
    const sizes = fc.double({ min: 5, max: 60, noNaN: true });
    const units = fc.constantFrom('in' as const, 'mm' as const);
    fc.assert(
      fc.property(sizes, units, fc.constantFrom('AISC' as const, 'EN' as const), (diameterMm, unit, code) => {
        const bolt = boltOfHole({ diameterMm, unit, code });
        if (bolt) expect(boltHole({ bolt, fit: 'standard', code }).widthMm).toBeCloseTo(diameterMm, 0);
      }),
    );
  });
});

describe('a hole of no bolt under EN', () => {
  const shop = shopWith(bayAInMillimeters, { settings: settingTable({ Units: 'mm', 'Edge code': 'EN' }) });

  it.each([9, 11, 12, 12.7, 14, 14.3, 15, 17.5, '14x18 slot'])('%s asks for no inch bolt', (hole) => {
    const row = { Section: 'FL 100x10', Grade: 'S235', Length: 500, Hole: hole, Edge: 50, End: 60 };
    expect(checkedRow({ ...row, Press: 'Bay A' }, shop).note).not.toMatch(/Check input|is not a size/);
  });
});
