import { refuse } from '../inputError.js';
import { type CellValue, isBlank, quoted } from './cellValue.js';
import { numberWithUnit } from './numberWithUnit.js';
import { pointBeforeThree, readNumber, refuseThousandsPoint } from './readNumber.js';
import { type LengthUnit, newtonPerKilonewton, newtonPerTonneForce, newtonPerUsTon } from './units.js';

const allowedUnits = 'Write US ton (2000 lbf), tonne (1000 kgf) or kN.';
/** The symbol of the tonne, where people work in metric units. */
const tonneSymbol = /^(?:t|to|tf)$/;
const greatestForceN = 50e6;

function newtonPer(unit: string, argument: string, received: CellValue, shopUnit: LengthUnit): number {
  const word = unit
    .toLowerCase()
    .replace(/[\s.]+/g, ' ')
    .trim();
  if (/^(?:us|u s|short) ?tons?(?: force)?$/.test(word)) return newtonPerUsTon;
  if (/^(?:tonnes?|metric tons?)(?: force)?$/.test(word)) return newtonPerTonneForce;
  if (word === 'kn') return newtonPerKilonewton;
  if (shopUnit === 'mm' && tonneSymbol.test(word)) return newtonPerTonneForce;
  const problem = /^(?:tons?|t|tf)$/.test(word)
    ? `"${unit}" is three different units.`
    : `"${unit.slice(0, 20)}" is not a unit of force.`;
  return refuse(argument, String(received), problem, allowedUnits);
}

/**
 * A force in N from a cell, with its unit in the text (`65 US ton`) or in the Unit column beside it.
 * A bare "ton" is refused: it is a US ton, a tonne or a long ton; `t` is the tonne in a shop that works in mm. Source: NIST SP 811 (from memory).
 */
export function readForce(
  value: CellValue,
  argument: string,
  unitCell: CellValue = null,
  shopUnit: LengthUnit = 'in',
): number {
  const read = numberWithUnit(value);
  if (!read) {
    const allowed = `Write a number and its unit. ${allowedUnits}`;
    return refuse(argument, String(value), `${quoted(value)} is not a force.`, allowed);
  }
  const unit = read.unit === '' && !isBlank(unitCell) ? String(unitCell) : read.unit;
  if (unit === '') return refuse(argument, String(value), `${quoted(value)} has no unit.`, allowedUnits);
  const factor = newtonPer(unit, argument, value, shopUnit);
  if (factor !== newtonPerUsTon && pointBeforeThree.test(String(read.number)) && typeof value === 'string')
    refuseThousandsPoint(argument, value, String(read.number), ` ${unit}`);
  const number = readNumber(read.number, argument);
  const forceN = number * factor;
  if (forceN > 0 && forceN <= greatestForceN) return forceN;
  return refuse(
    argument,
    String(value),
    `${quoted(value)} is out of range.`,
    'Write a force above zero, up to 50,000 kN.',
  );
}
