import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLength } from '../../../src/core/quantity/readLength.js';
import { sizeLikeTyped } from '../../../src/core/quantity/sizeLikeTyped.js';

describe('a size in the form of the one beside it', () => {
  it.each([
    [6096, "24'-0", "20'-0"],
    [6096, '24\'-0"', '20\'-0"'],
    [6108.7, '24 ft', "20'-0 1/2"],
    [6096, '24ft', "20'-0"],
    [25.4, "24'-0", '1"'],
    [6096, '288', '240'],
    [6096, '288 in', '240'],
    [6096, '7315.2 mm', '6096 mm'],
    [6000, '7300 mm', '6000 mm'],
    [6000, "24'-0", '6000 mm'],
  ])('%d mm beside %s is %s', (mm, typed, text) => {
    expect(sizeLikeTyped(mm, typed, 'in')).toBe(text);
  });

  it('is in inches beside feet in a shop of millimeters', () => {
    expect(sizeLikeTyped(6096, "24'-0", 'mm')).toBe("20'-0");
    expect(sizeLikeTyped(6000, "24'-0", 'mm')).toBe('236.22 in');
    expect(sizeLikeTyped(6000, '7300', 'mm')).toBe('6000');
  });

  it('in feet is read as the same length again', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4, max: 64_000 }), (parts) => {
        const mm = (parts / 64) * 25.4;
        expect(readLength(sizeLikeTyped(mm, "24'-0", 'in'), 'Length', 'in')).toBeCloseTo(mm, 9);
      }),
    );
  });
});
