import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readHole } from '../../../src/core/tooling/readHole.js';
import { slotText } from '../../../src/core/tooling/slotText.js';

describe('slotText', () => {
  it.each([
    [20.6375, 47.625, 'in', '13/16x1-7/8'],
    [28.575, 63.5, 'in', '1-1/8x2-1/2'],
    [53.975, 127, 'in', 'slot 2-1/8x5'],
    [22, 50, 'mm', '22x50'],
    [51, 120, 'mm', 'slot 51x120'],
    [18, 22, 'mm', 'slot 18x22'],
    [17.9999, 22, 'mm', 'slot 18x22'],
    [22, 50, 'in', '0.866x1-31/32'],
  ] as const)('%d × %d mm in %s: %s', (widthMm, lengthMm, unit, text) => {
    expect(slotText({ widthMm, lengthMm }, unit)).toBe(text);
  });

  it('is read as the same slot again, to its last digit', () => {
    const width = fc.double({ min: 10, max: 80, noNaN: true });
    const longer = fc.double({ min: 1, max: 200, noNaN: true });
    fc.assert(
      fc.property(width, longer, fc.constantFrom('in' as const, 'mm' as const), (widthMm, more, unit) => {
        const lengthMm = widthMm + more;
        const { hole, count } = readHole(slotText({ widthMm, lengthMm }, unit), 'Hole', unit);
        expect(count).toBeUndefined();
        if (hole.shape !== 'slot') throw new Error(`read as ${hole.shape}`);
        const digit = unit === 'in' ? 0.001 * 25.4 : 0.01;
        expect(Math.abs(hole.widthMm - widthMm)).toBeLessThan(digit);
        expect(Math.abs(hole.lengthMm - lengthMm)).toBeLessThan(digit);
      }),
    );
  });
});
