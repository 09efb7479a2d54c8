import { feetInchText } from '../quantity/feetInch.js';
import { formatNumber } from '../quantity/formatLength.js';
import { type LengthUnit, mmPerInch } from '../quantity/units.js';
import { size } from './sizes.js';

const inchesPerFoot = 12;
/** What a tape shows. */
const denominator = 16;

/** A length along a bar as a tape shows it, with its unit: `6'-2 1/8"`, `9-1/2 in`, `1240.5 mm`. */
export function barLength(lengthMm: number, unit: LengthUnit): string {
  if (unit === 'mm') return `${formatNumber(lengthMm, 1)} mm`;
  const inches = lengthMm / mmPerInch;
  if (inches >= inchesPerFoot) return feetInchText({ lengthMm, denominator });
  return size((Math.round(inches * denominator) / denominator) * mmPerInch, unit);
}
