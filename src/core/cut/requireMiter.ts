import { refuse } from '../inputError.js';
import { formatNumber } from '../quantity/formatLength.js';
import { radianPerDegree } from '../quantity/units.js';

/** Steeper ends are no miters of bars. Common practice, no source. */
export const greatestMiterDegree = 60;

const roundingRad = 1e-9;

/** Refuses a miter steeper than any that is cut, of either lean. */
export function requireMiter(argument: string, rad: number): void {
  if (Math.abs(rad) <= greatestMiterDegree * radianPerDegree + roundingRad) return;
  const degrees = `${formatNumber(rad / radianPerDegree, 2)}°`;
  refuse(
    argument,
    degrees,
    `a miter of ${degrees} is out of range.`,
    `Give up to ${greatestMiterDegree}° from square.`,
  );
}
