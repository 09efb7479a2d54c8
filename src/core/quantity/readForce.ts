import { InputError, refuse } from '../inputError.js';
import { type CellValue, isBlank, quoted } from './cellValue.js';
import { formatNumber } from './formatLength.js';
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

function unitOf(written: string, unitCell: CellValue): string {
  return written === '' && !isBlank(unitCell) ? String(unitCell) : written;
}

/**
 * What a force whose unit may be misread is read as: `130 tonne (1000 kgf), 1275 kN` for `130 t`. Undefined for a force
 * that names its unit, and for what is no force.
 */
export function forceReading(
  value: CellValue,
  unitCell: CellValue,
  shopUnit: LengthUnit,
): string | undefined {
  const read = numberWithUnit(value);
  if (!read || !tonneSymbol.test(unitOf(read.unit, unitCell).trim().toLowerCase())) return undefined;
  try {
    const forceN = readForce(value, 'Force', unitCell, shopUnit);
    const tonnes = formatNumber(forceN / newtonPerTonneForce, 2);
    return `${tonnes} tonne (1000 kgf), ${formatNumber(forceN / newtonPerKilonewton, 0)} kN`;
  } catch (error) {
    if (error instanceof InputError) return undefined;
    throw error;
  }
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
  const unit = unitOf(read.unit, unitCell);
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
