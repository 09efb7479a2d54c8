import { refuse } from '../inputError.js';
import { type CellValue, isBlank, quoted } from '../quantity/cellValue.js';
import { digitsValue, refuseBothReadings } from '../quantity/readNumber.js';
import { megapascalPer } from '../quantity/stressUnits.js';
import type { LengthUnit } from '../quantity/units.js';
import { visibleText } from '../quantity/visibleText.js';
import { findGrade, gradeExample, strengthExample } from './findGrade.js';
import type { Grade } from './grade.js';

const longestText = 60;
const leastMPa = 20;
const greatestMPa = 2000;
const bareStrength = /^\d[\d.,]* ?(?:mpa|n\/mm[2²]|ksi|psi)$/;
const strengthPattern =
  /^(shear|tensile)(?![a-z])(?: strength)? ?[:=]? ?(\d[\d.,]*)?(?: ?(n\/mm[2²]|[a-z]+))?$/;

/**
 * A grade from a cell: a name, or a strength with its unit (`shear 310 MPa`, `tensile 65 ksi`, also N/mm² and
 * psi). A tensile strength that is given so is the highest of the steel, and counts as its lower bound too. A number is
 * read as a name (304).
 *
 * @param value the cell
 * @param argument what the cell is, for the refusal
 * @param own the shop's own grades
 * @param unit the shop's unit, for the strength that is shown as an example
 * @returns the grade; one made of a strength has the density of steel
 * Valid for strengths from 20 to 2000 MPa. Throws `unknown` for a name in no list, `invalid` for anything else.
 * @example readGrade('shear 310 MPa', 'Grade').shearMPa // 310
 * Source: common practice, no source.
 */
export function readGrade(
  value: CellValue,
  argument: string,
  own: readonly Grade[] = [],
  unit: LengthUnit = 'in',
): Grade {
  const allowed = `Write a grade such as ${gradeExample(unit)}, or ${strengthExample(unit)}.`;
  if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', allowed);
  if (typeof value === 'string')
    return strengthGrade(value, argument, allowed) ?? findGrade(value, argument, own, unit);
  const name = typeof value === 'number' ? numberName(value) : undefined;
  if (name === undefined) return refuse(argument, String(value), `${quoted(value)} is not a grade.`, allowed);
  return findGrade(name, argument, own, unit);
}

/** A number as a name: 304, or a material number of EN 10027-2 whose zeros the cell has lost: 1.057 is 1.0570. */
function numberName(value: number): string | undefined {
  if (value > 1 && value < 2) return value.toFixed(4);
  return Number.isInteger(value) && value > 0 ? String(value) : undefined;
}

function strengthGrade(value: string, argument: string, allowed: string): Grade | undefined {
  if (value.length > longestText) return undefined;
  const name = visibleText(value).replace(/\s+/g, ' ').trim();
  const text = name.toLowerCase();
  if (bareStrength.test(text)) {
    const fix = `Write "shear ${name}", or "tensile ${name}" for the highest tensile strength.`;
    return refuse(argument, value, `${quoted(value)} may be a shear or a tensile strength.`, fix);
  }
  const match = strengthPattern.exec(text);
  if (!match) return undefined;
  const [, word, digits = '', unit = ''] = match;
  const number = digitsValue(digits);
  if (number === 'ambiguous') return refuseBothReadings(argument, value, digits);
  if (number === undefined)
    return refuse(argument, value, `${quoted(value)} has no strength in it.`, allowed);
  const factor = megapascalPer.get(unit);
  if (factor === undefined) {
    const problem = unit === '' ? 'has no unit' : 'has a unit that is not one of strength';
    return refuse(argument, value, `${quoted(value)} ${problem}.`, 'Write MPa, N/mm2, ksi or psi behind it.');
  }
  const strengthMPa = number * factor;
  if (strengthMPa < leastMPa || strengthMPa > greatestMPa) {
    const range = `Allowed: ${leastMPa} to ${greatestMPa} MPa (3 to 290 ksi).`;
    return refuse(argument, value, `${quoted(value)} is out of range.`, range);
  }
  const strengths =
    word === 'shear'
      ? { shearMPa: strengthMPa }
      : { tensileMinMPa: strengthMPa, tensileUpperMPa: strengthMPa };
  return { name, family: 'steel', densityKgPerM3: 7850, source: 'strength as typed', ...strengths };
}
