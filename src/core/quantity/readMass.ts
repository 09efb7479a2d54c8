import { refuse } from '../inputError.js';
import { type CellValue, quoted } from './cellValue.js';
import { numberWithUnit } from './numberWithUnit.js';
import { pointBeforeThree, readNumber, refuseThousandsPoint } from './readNumber.js';
import { kilogramPerPound, type LengthUnit } from './units.js';

const kilogramPer = new Map<string, number>([
  ['kg', 1],
  ['lb', kilogramPerPound],
  ['lbs', kilogramPerPound],
]);
const greatestKg = 100_000;
const allowed = 'Write a mass above zero with its unit, such as 500 lb or 230 kg.';

/** A mass in kg from a cell: text with its unit, or a number in lb (inch shop) or kg (mm shop). */
export function readMass(value: CellValue, argument: string, unit: LengthUnit): number {
  const read = numberWithUnit(value);
  const word = read?.unit.toLowerCase() || (unit === 'in' ? 'lb' : 'kg');
  const factor = kilogramPer.get(word);
  if (read === undefined || factor === undefined) {
    return refuse(argument, String(value), `${quoted(value)} is not a mass.`, allowed);
  }
  if (typeof value === 'string' && factor === 1 && pointBeforeThree.test(String(read.number)))
    refuseThousandsPoint(argument, value, String(read.number), ' kg');
  const massKg = readNumber(read.number, argument, allowed) * factor;
  if (massKg > 0 && massKg <= greatestKg) return massKg;
  return refuse(argument, String(value), `${quoted(value)} is out of range.`, allowed);
}
