import { type Failure, InputError, refuse } from '../inputError.js';
import type { Grade } from '../material/grade.js';
import { type CellValue, isBlank, plainText, quoted } from '../quantity/cellValue.js';
import { readNumber } from '../quantity/readNumber.js';
import { readStress } from '../quantity/readStress.js';
import { kilogramPerPound, type LengthUnit, mmPerFoot } from '../quantity/units.js';
import { type Cells, nameKey, readTable, type Table } from './table.js';

/** A grade of the shop's own table; `problem` says why it cannot be used. */
export type OwnGrade =
  | { name: string; grade: Grade; problem?: undefined }
  | { name: string; problem: Failure; grade?: undefined };

const steelDensity = 7850;
const kilogramPerCubicMeterPerPoundPerCubicFoot = kilogramPerPound / (mmPerFoot / 1000) ** 3;

/** Reads the Grades table: Grade, Tensile min, Tensile upper, Shear, Density, Source. */
export function readGrades(cells: Cells | undefined, unit: LengthUnit): OwnGrade[] {
  if (!cells) return [];
  const table = readTable(cells, 'Grades', ['Grade']);
  const grades: OwnGrade[] = [];
  for (const row of table.rows) {
    const name = table.cell(row, 'Grade');
    if (isBlank(name)) continue;
    grades.push(ownGrade(plainText(String(name)), row, table, unit));
  }
  return grades.map((own) => {
    const same = grades.filter((other) => nameKey(other.name) === nameKey(own.name)).length;
    return same > 1 ? { name: own.name, problem: twice(own.name, same) } : own;
  });
}

function twice(name: string, times: number): Failure {
  const problem = `${name} stands in the table ${times} times.`;
  return { code: 'invalid', argument: 'Grades', received: name, problem, allowed: 'Keep one.' };
}

function ownGrade(name: string, row: readonly CellValue[], table: Table, unit: LengthUnit): OwnGrade {
  const argument = (heading: string) => `Grades, ${name}, ${heading}`;
  const strength = (heading: string) => {
    const cell = table.cell(row, heading);
    return isBlank(cell) ? undefined : readStress(cell, argument(heading), unit);
  };
  try {
    const tensileMinMPa = strength('Tensile min');
    const tensileUpperMPa = strength('Tensile upper');
    const shearMPa = strength('Shear');
    if (tensileUpperMPa === undefined && shearMPa === undefined) {
      const fix = 'Fill in one of them, from the mill certificate or the product standard.';
      refuse(`Grades, ${name}`, '', 'Tensile upper and Shear are both blank.', fix);
    }
    const source = table.cell(row, 'Source');
    const densityKgPerM3 = density(table.cell(row, 'Density'), argument('Density'), unit);
    const grade: Grade = {
      name,
      family: familyOf(densityKgPerM3),
      densityKgPerM3,
      source: isBlank(source)
        ? "the shop's Grades table"
        : `the shop's Grades table: ${plainText(String(source))}`,
      ...(tensileMinMPa === undefined ? {} : { tensileMinMPa }),
      ...(tensileUpperMPa === undefined ? {} : { tensileUpperMPa }),
      ...(shearMPa === undefined ? {} : { shearMPa }),
    };
    return { name, grade };
  } catch (error) {
    if (error instanceof InputError) return { name, problem: error.failure };
    throw error;
  }
}

/** The metal is told by its density: the table has no column for it. */
function familyOf(densityKgPerM3: number): Grade['family'] {
  if (densityKgPerM3 < 4000) return 'aluminum';
  if (densityKgPerM3 < 8200) return 'steel';
  return densityKgPerM3 < 8800 ? 'brass' : 'copper';
}

function density(cell: CellValue, argument: string, unit: LengthUnit): number {
  if (isBlank(cell)) return steelDensity;
  const allowed = 'Write kg/m³ from 1000 to 20000 (mm shop) or lb/ft³ from 62 to 1250 (inch shop).';
  const number = readNumber(cell, argument, allowed);
  const densityKgPerM3 = unit === 'in' ? number * kilogramPerCubicMeterPerPoundPerCubicFoot : number;
  if (densityKgPerM3 >= 990 && densityKgPerM3 <= 20_100) return densityKgPerM3;
  return refuse(argument, String(cell), `${quoted(cell)} is out of range.`, allowed);
}
