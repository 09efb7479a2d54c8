import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength } from '../../../src/core/quantity/readLength.js';
import { barLength } from '../../../src/core/say/barLength.js';

const inch = 25.4;

describe('a length along a bar', () => {
  it('is told as the shop says it, never rounded to a coarser mark', () => {
    expect(barLength(9.5 * inch, 'in')).toBe('9-1/2"');
    expect(barLength(74.125 * inch, 'in')).toBe('6\'-2 1/8"');
    expect(barLength(74 * inch + inch / 32, 'in')).toBe('6\'-2 1/32"');
    expect(barLength(1240.46, 'mm')).toBe('1240.46 mm');
  });

  it('reads as the same length again, to half of the finest mark', () => {
    fc.assert(
      fc.property(fc.double({ min: 10, max: 12000, noNaN: true }), (mm) => {
        expect(Math.abs(readLength(barLength(mm, 'in'), 'Length', 'in', 'length') - mm)).toBeLessThanOrEqual(
          inch / 128 + 1e-6,
        );
      }),
    );
  });
});
