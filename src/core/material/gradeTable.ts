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
  aluminum: 2700,
  brass: 8530,
  copper: 8940,
};

const steel = { family: 'steel', unit: 'ksi' } as const;
const metricSteel = { family: 'steel', unit: 'MPa' } as const;
const stainless = { family: 'stainless', unit: 'ksi' } as const;
const aluminum = { family: 'aluminum', unit: 'ksi', shearMargin: 1.15 } as const;
const enStainless = { family: 'stainless', unit: 'MPa' } as const;
const a572 = 'ASTM A572, tensile requirements (from memory); upper bound: common practice';
const en6 = 'EN 10025-6, tensile strength, 3 to 50 mm (from memory)';
const formed = 'EN 10149-2, tensile strength (from memory)';
const en10088 = 'EN 10088-2, tensile strength, strip and plate (from memory)';
const en = 'EN 10025-2, tensile strength, 3 to 100 mm';
const a240 = 'ASTM A240, tensile strength; upper bound and shear strength: common practice';
const aluminumData = 'Aluminum Standards and Data, typical shear × 1.15 (common practice) (from memory)';

// prettier-ignore
const rows: readonly GradeRow[] = [
  { ...steel, name: 'Mild', tensileMin: 65, tensileUpper: 65, shear: 50, source: 'common practice (rule of thumb)' },
  { ...steel, name: 'A36', tensileMin: 58, tensileUpper: 80, source: 'ASTM A36, tensile requirements' },
  { ...steel, name: 'A572-50', tensileMin: 65, tensileUpper: 85, source: 'ASTM A572, tensile requirements; upper bound: common practice' },
  { ...steel, name: 'A529-50', tensileMin: 65, tensileUpper: 100, source: 'ASTM A529, tensile requirements (from memory)' },
  { ...steel, name: 'A588', tensileMin: 70, tensileUpper: 90, source: 'ASTM A588, tensile requirements (from memory); upper bound: common practice' },
  { ...steel, name: 'A992', tensileMin: 65, tensileUpper: 85, source: 'ASTM A992, tensile requirements; upper bound: common practice' },
  { ...steel, name: 'A514', tensileMin: 110, tensileUpper: 130, source: 'ASTM A514, tensile requirements (from memory)' },
  { ...steel, name: 'A572-42', tensileMin: 60, tensileUpper: 80, source: a572 },
  { ...steel, name: 'A572-55', tensileMin: 70, tensileUpper: 90, source: a572 },
  { ...steel, name: 'A572-60', tensileMin: 75, tensileUpper: 95, source: a572 },
  { ...steel, name: 'A572-65', tensileMin: 80, tensileUpper: 100, source: a572 },
  { ...steel, name: 'A529-55', tensileMin: 70, tensileUpper: 100, source: 'ASTM A529, tensile requirements (from memory)' },
  { ...steel, name: 'A283-C', tensileMin: 55, tensileUpper: 75, source: 'ASTM A283, tensile requirements (from memory)' },
  { ...steel, name: 'A516-70', tensileMin: 70, tensileUpper: 90, source: 'ASTM A516, tensile requirements (from memory)' },
  { ...steel, name: 'A500-B', tensileMin: 58, tensileUpper: 80, source: 'ASTM A500, shaped tubing (from memory); upper bound: common practice' },
  { ...steel, name: 'A500-C', tensileMin: 62, tensileUpper: 85, source: 'ASTM A500, shaped tubing (from memory); upper bound: common practice' },
  { ...steel, name: 'A53-B', tensileMin: 60, tensileUpper: 80, source: 'ASTM A53, tensile requirements (from memory); upper bound: common practice' },
  { ...steel, name: '1018', tensileUpper: 85, source: 'common practice, hot rolled to cold drawn' },
  { ...metricSteel, name: 'S185', tensileMin: 290, tensileUpper: 510, source: `${en} (from memory)` },
  { ...metricSteel, name: 'S235', tensileMin: 360, tensileUpper: 510, source: en },
  { ...metricSteel, name: 'S275', tensileMin: 410, tensileUpper: 560, thinTensileUpper: 580, source: en },
  { ...metricSteel, name: 'S355', tensileMin: 470, tensileUpper: 630, thinTensileUpper: 680, source: en },
  { ...metricSteel, name: 'S460', tensileMin: 540, tensileUpper: 720, source: 'EN 10025-3, tensile strength (from memory)' },
  { ...metricSteel, name: 'S420', tensileMin: 520, tensileUpper: 680, source: 'EN 10025-3, tensile strength (from memory)' },
  { ...metricSteel, name: 'S450', tensileMin: 550, tensileUpper: 720, source: `${en} (from memory)` },
  { ...metricSteel, name: 'S690', tensileMin: 770, tensileUpper: 940, source: en6 },
  { ...metricSteel, name: 'S890', tensileMin: 940, tensileUpper: 1100, source: en6 },
  { ...metricSteel, name: 'S960', tensileMin: 980, tensileUpper: 1150, source: en6 },
  { ...metricSteel, name: 'E295', tensileMin: 470, tensileUpper: 610, source: `${en} (from memory)` },
  { ...metricSteel, name: 'E335', tensileMin: 570, tensileUpper: 710, source: `${en} (from memory)` },
  { ...metricSteel, name: 'E360', tensileMin: 670, tensileUpper: 830, source: `${en} (from memory)` },
  { ...metricSteel, name: 'S315MC', tensileMin: 390, tensileUpper: 510, source: formed },
  { ...metricSteel, name: 'S355MC', tensileMin: 430, tensileUpper: 550, source: formed },
  { ...metricSteel, name: 'S420MC', tensileMin: 480, tensileUpper: 620, source: formed },
  { ...metricSteel, name: 'S460MC', tensileMin: 520, tensileUpper: 670, source: formed },
  { ...metricSteel, name: 'S500MC', tensileMin: 550, tensileUpper: 700, source: formed },
  { ...metricSteel, name: 'S550MC', tensileMin: 600, tensileUpper: 760, source: formed },
  { ...metricSteel, name: 'S600MC', tensileMin: 650, tensileUpper: 820, source: formed },
  { ...metricSteel, name: 'S650MC', tensileMin: 700, tensileUpper: 880, source: formed },
  { ...metricSteel, name: 'S700MC', tensileMin: 750, tensileUpper: 950, source: formed },
  { ...metricSteel, name: 'SS400', tensileMin: 400, tensileUpper: 510, source: 'JIS G 3101, tensile strength (from memory)' },
  { ...metricSteel, name: 'Q235', tensileMin: 370, tensileUpper: 500, source: 'GB/T 700, tensile strength (from memory)' },
  { ...metricSteel, name: 'Q355', tensileMin: 470, tensileUpper: 630, source: 'GB/T 1591, tensile strength (from memory)' },
  { ...metricSteel, name: '300W', tensileMin: 450, tensileUpper: 620, source: 'CSA G40.21, tensile strength' },
  { ...metricSteel, name: '350W', tensileMin: 450, tensileUpper: 650, source: 'CSA G40.21, tensile strength' },
  { ...metricSteel, name: '350AT', tensileMin: 480, tensileUpper: 650, source: 'CSA G40.21, tensile strength (from memory)' },
  { ...stainless, name: '304L', tensileMin: 70, tensileUpper: 100, shear: 75, source: a240 },
  { ...stainless, name: '316L', tensileMin: 70, tensileUpper: 100, shear: 75, source: a240 },
  { ...enStainless, name: '1.4301', tensileMin: 520, tensileUpper: 750, source: en10088 },
  { ...enStainless, name: '1.4307', tensileMin: 500, tensileUpper: 700, source: en10088 },
  { ...enStainless, name: '1.4401', tensileMin: 520, tensileUpper: 680, source: en10088 },
  { ...enStainless, name: '1.4404', tensileMin: 520, tensileUpper: 680, source: en10088 },
  { ...enStainless, name: '1.4571', tensileMin: 520, tensileUpper: 690, source: en10088 },
  { ...stainless, name: '304', tensileMin: 75, tensileUpper: 100, shear: 75, source: a240 },
  { ...stainless, name: '316', tensileMin: 75, tensileUpper: 100, shear: 75, source: a240 },
  { ...aluminum, name: '6061-T6', tensileMin: 42, shear: 30, source: aluminumData },
  { ...aluminum, name: '5052-H32', tensileMin: 31, tensileUpper: 38, shear: 20, source: aluminumData },
  { ...aluminum, name: '3003-H14', tensileMin: 20, tensileUpper: 26, shear: 14, source: aluminumData },
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
