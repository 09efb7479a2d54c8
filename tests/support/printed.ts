import { expect } from 'vitest';

/**
 * Holds a value against printed digits: `'4.80'` allows half a unit of its last digit. Digits printed with fewer
 * places than they have certainty can be given a wider `units` of the last place.
 */
export function expectPrinted(value: number, digits: string, units = 0.5): void {
  const plain = digits.replaceAll(',', '');
  const decimals = plain.includes('.') ? plain.length - plain.indexOf('.') - 1 : 0;
  const allowed = units * 10 ** -decimals;
  const apart = Math.abs(value - Number(plain));
  expect(apart, `${value} against the printed ${digits}`).toBeLessThanOrEqual(allowed * (1 + 1e-9));
}
