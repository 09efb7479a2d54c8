import { megapascalPerKsi } from '../quantity/units.js';
import type { Grade } from './grade.js';

/** A row in the units its page prints. */
interface GradeRow {
  name: string;
  family: Grade['family'];
  unit: 'ksi' | 'MPa';
  tensileMin?: number;
  tensileUpper?: number;
  thinTensileUpper?: number;
  shear?: number;
  /** What a typical shear strength is raised by to serve as an upper bound. */
  shearMargin?: number;
  source: string;
}

/** kg/m³. Steel: EN 10025, 7850; the others from memory of general references. */
const densityKgPerM3: Record<Grade['family'], number> = {
  steel: 7850,
  stainless: 7900,
  aluminium: 2700,
  brass: 8530,
  copper: 8940,
};

const steel = { family: 'steel', unit: 'ksi' } as const;
const metricSteel = { family: 'steel', unit: 'MPa' } as const;
const stainless = { family: 'stainless', unit: 'ksi' } as const;
const aluminium = { family: 'aluminium', unit: 'ksi', shearMargin: 1.15 } as const;
const en = 'EN 10025-2, tensile strength, 3 to 100 mm';
const a240 = 'ASTM A240, tensile strength; upper bound and shear strength: common practice';
const aluminum = 'Aluminum Standards and Data, typical shear × 1.15 (common practice) (from memory)';

// prettier-ignore
const rows: readonly GradeRow[] = [
  { ...steel, name: 'Mild', tensileMin: 65, tensileUpper: 65, shear: 50, source: 'common practice (rule of thumb)' },
  { ...steel, name: 'A36', tensileMin: 58, tensileUpper: 80, source: 'ASTM A36, tensile requirements' },
  { ...steel, name: 'A572-50', tensileMin: 65, tensileUpper: 85, source: 'ASTM A572, tensile requirements; upper bound: common practice' },
  { ...steel, name: 'A529-50', tensileMin: 65, tensileUpper: 100, source: 'ASTM A529, tensile requirements (from memory)' },
  { ...steel, name: 'A588', tensileMin: 70, tensileUpper: 90, source: 'ASTM A588, tensile requirements (from memory); upper bound: common practice' },
  { ...steel, name: 'A992', tensileMin: 65, tensileUpper: 85, source: 'ASTM A992, tensile requirements; upper bound: common practice' },
  { ...steel, name: 'A514', tensileMin: 110, tensileUpper: 130, source: 'ASTM A514, tensile requirements (from memory)' },
  { ...metricSteel, name: 'S235', tensileMin: 360, tensileUpper: 510, source: en },
  { ...metricSteel, name: 'S275', tensileMin: 410, tensileUpper: 560, thinTensileUpper: 580, source: en },
  { ...metricSteel, name: 'S355', tensileMin: 470, tensileUpper: 630, thinTensileUpper: 680, source: en },
  { ...metricSteel, name: 'S460', tensileMin: 540, tensileUpper: 720, source: 'EN 10025-3, tensile strength (from memory)' },
  { ...metricSteel, name: '300W', tensileMin: 450, tensileUpper: 620, source: 'CSA G40.21, tensile strength' },
  { ...metricSteel, name: '350W', tensileMin: 450, tensileUpper: 650, source: 'CSA G40.21, tensile strength' },
  { ...stainless, name: '304', tensileMin: 75, tensileUpper: 100, shear: 75, source: a240 },
  { ...stainless, name: '316', tensileMin: 75, tensileUpper: 100, shear: 75, source: a240 },
  { ...aluminium, name: '6061-T6', tensileMin: 42, shear: 30, source: aluminum },
  { ...aluminium, name: '5052-H32', tensileMin: 31, tensileUpper: 38, shear: 20, source: aluminum },
  { ...aluminium, name: '3003-H14', tensileMin: 20, tensileUpper: 26, shear: 14, source: aluminum },
  { name: 'Brass C260', family: 'brass', unit: 'ksi', shear: 40, source: 'common practice, half hard' },
  { name: 'Copper C110', family: 'copper', unit: 'ksi', shear: 26, source: 'common practice, half hard' },
];

/** The grades that need no entry in the shop's own table, in MPa. */
export const builtInGrades: readonly Grade[] = rows.map(toGrade);

function toGrade(row: GradeRow): Grade {
  const factor = row.unit === 'ksi' ? megapascalPerKsi : 1;
  const { name, family, source, tensileMin, tensileUpper, thinTensileUpper, shear, shearMargin = 1 } = row;
  return {
    name,
    family,
    densityKgPerM3: densityKgPerM3[family],
    source,
    ...(tensileMin === undefined ? {} : { tensileMinMPa: tensileMin * factor }),
    ...(tensileUpper === undefined ? {} : { tensileUpperMPa: tensileUpper * factor }),
    ...(thinTensileUpper === undefined ? {} : { thinTensileUpperMPa: thinTensileUpper * factor }),
    ...(shear === undefined ? {} : { shearMPa: shear * factor * shearMargin }),
  };
}
