import { refuse } from '../inputError.js';
import { type CellValue, quoted } from './cellValue.js';
import { numberWithUnit } from './numberWithUnit.js';
import { readNumber } from './readNumber.js';
import { megapascalPer } from './stressUnits.js';
import type { LengthUnit } from './units.js';

const leastMPa = 20;
const greatestMPa = 3000;
const allowed = 'Write a strength from 20 to 3000 MPa, such as 310 MPa or 45 ksi.';

/** A stress in MPa from a cell: text with its unit, or a number in ksi (inch shop) or MPa (mm shop). */
export function readStress(value: CellValue, argument: string, unit: LengthUnit): number {
  const read = numberWithUnit(value);
  const word = read?.unit.toLowerCase() || (unit === 'in' ? 'ksi' : 'mpa');
  const factor = megapascalPer.get(word);
  if (read === undefined || factor === undefined) {
    return refuse(argument, String(value), `${quoted(value)} is not a strength.`, allowed);
  }
  const stressMPa = readNumber(read.number, argument, allowed) * factor;
  if (stressMPa >= leastMPa && stressMPa <= greatestMPa) return stressMPa;
  return refuse(argument, String(value), `${quoted(value)} is out of range.`, allowed);
}
