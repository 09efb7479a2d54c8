import { refuse } from '../inputError.js';
import { type CellValue, quoted } from './cellValue.js';
import { readNumber } from './readNumber.js';
import { radianPerDegree } from './units.js';

/** An angle in rad from a cell in degrees (`45`, `45°`, `45 deg`), within the limits given in degrees. */
export function readAngle(
  value: CellValue,
  argument: string,
  leastDegree: number,
  greatestDegree: number,
): number {
  const allowed = `Write degrees from ${leastDegree} to ${greatestDegree}.`;
  const digits = typeof value === 'string' ? value.trim().replace(/ ?(?:°|deg|degrees)$/i, '') : value;
  const degree = readNumber(digits, argument, allowed);
  if (degree >= leastDegree && degree <= greatestDegree) return degree * radianPerDegree;
  return refuse(argument, String(value), `${quoted(value)} is out of range.`, allowed);
}
