import { describe, expect, it } from 'vitest';
import { allowedRange } from '../../../src/core/quantity/allowedRange.js';
import { type LengthKindName, lengthKinds } from '../../../src/core/quantity/lengthKind.js';
import { readLength } from '../../../src/core/quantity/readLength.js';
import { sectionKinds } from '../../../src/core/section/dimension.js';

const names = Object.keys(lengthKinds) as LengthKindName[];

describe('allowedRange', () => {
  it.each([
    ['hole', 'in', 'Allowed: 1/16 to 12 in.'],
    ['hole', 'mm', 'Allowed: 1.6 to 300 mm.'],
    ['thickness', 'mm', 'Allowed: 0.4 to 100 mm.'],
    ['distance', 'mm', 'Allowed: 0.4 to 20000 mm.'],
    ['length', 'in', 'Allowed: 1/16 to 4000 in.'],
  ] as const)('of a %s in %s', (name, unit, range) => {
    expect(allowedRange(lengthKinds[name], unit)).toBe(range);
  });

  it.each(names.flatMap((name) => [[name, 'in'] as const, [name, 'mm'] as const]))(
    'of a %s in %s shows only sizes that are read',
    (name, unit) => {
      const [, least = '', greatest = ''] =
        /^Allowed: (\S+) to (\S+) (?:in|mm)\.$/.exec(allowedRange(lengthKinds[name], unit)) ?? [];
      for (const shown of [least, greatest]) {
        const mm = readLength(shown, 'Size', unit, name);
        expect(mm).toBeGreaterThanOrEqual(lengthKinds[name].leastMm);
        expect(mm).toBeLessThanOrEqual(lengthKinds[name].greatestMm);
      }
    },
  );

  it('of a section lies within what is read', () => {
    expect(allowedRange(sectionKinds.leg, 'mm')).toBe('Allowed: 9.6 to 300 mm.');
    expect(allowedRange(sectionKinds.barWidth, 'in')).toBe('Allowed: 3/8 to 24 in.');
  });
});
