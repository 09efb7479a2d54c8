import { megapascalPerKsi } from '../quantity/units.js';

/** The groups by which bridge specifications limit punching. */
export type SteelGroup = 'carbon' | 'high strength' | 'quenched and tempered';

export interface YieldRow {
  grade: string;
  yieldMPa: number;
  group: SteelGroup;
}

const ksi = (yieldKsi: number) => yieldKsi * megapascalPerKsi;

/**
 * Least yield strength of the built-in structural steels, for rules of specifications that ask for it.
 * Source: ASTM A36, A283, A516, A572, A529, A588, A992, A514; EN 10025 to 16 mm; EN 10149-2; CSA G40.21; JIS G 3101; GB/T 700 and 1591
 * (from memory). Which
 * group a grade belongs to: common practice.
 */
const yieldRows: readonly YieldRow[] = [
  { grade: 'A36', yieldMPa: ksi(36), group: 'carbon' },
  { grade: 'A572-50', yieldMPa: ksi(50), group: 'high strength' },
  { grade: 'A529-50', yieldMPa: ksi(50), group: 'high strength' },
  { grade: 'A588', yieldMPa: ksi(50), group: 'high strength' },
  { grade: 'A992', yieldMPa: ksi(50), group: 'high strength' },
  { grade: 'A514', yieldMPa: ksi(100), group: 'quenched and tempered' },
  { grade: 'S235', yieldMPa: 235, group: 'carbon' },
  { grade: 'S275', yieldMPa: 275, group: 'carbon' },
  { grade: 'S355', yieldMPa: 355, group: 'high strength' },
  { grade: 'S460', yieldMPa: 460, group: 'high strength' },
  { grade: 'A572-42', yieldMPa: ksi(42), group: 'high strength' },
  { grade: 'A572-55', yieldMPa: ksi(55), group: 'high strength' },
  { grade: 'A572-60', yieldMPa: ksi(60), group: 'high strength' },
  { grade: 'A572-65', yieldMPa: ksi(65), group: 'high strength' },
  { grade: 'A529-55', yieldMPa: ksi(55), group: 'high strength' },
  { grade: 'A283-C', yieldMPa: ksi(30), group: 'carbon' },
  { grade: 'A516-70', yieldMPa: ksi(38), group: 'carbon' },
  { grade: 'A500-B', yieldMPa: ksi(46), group: 'carbon' },
  { grade: 'A500-C', yieldMPa: ksi(50), group: 'high strength' },
  { grade: 'A53-B', yieldMPa: ksi(35), group: 'carbon' },
  // Cold drawn, the stronger of what is sold: common practice.
  { grade: '1018', yieldMPa: ksi(54), group: 'carbon' },
  { grade: 'E295', yieldMPa: 295, group: 'carbon' },
  { grade: 'E335', yieldMPa: 335, group: 'carbon' },
  { grade: 'E360', yieldMPa: 360, group: 'carbon' },
  { grade: 'S185', yieldMPa: 185, group: 'carbon' },
  { grade: 'S420', yieldMPa: 420, group: 'high strength' },
  { grade: 'S450', yieldMPa: 450, group: 'high strength' },
  { grade: 'S690', yieldMPa: 690, group: 'quenched and tempered' },
  { grade: 'S890', yieldMPa: 890, group: 'quenched and tempered' },
  { grade: 'S960', yieldMPa: 960, group: 'quenched and tempered' },
  { grade: 'SS400', yieldMPa: 245, group: 'carbon' },
  { grade: 'Q235', yieldMPa: 235, group: 'carbon' },
  { grade: 'Q355', yieldMPa: 355, group: 'high strength' },
  { grade: '350AT', yieldMPa: 350, group: 'high strength' },
  ...[315, 355, 420, 460, 500, 550, 600, 650, 700].map(
    (yieldMPa): YieldRow => ({ grade: `S${yieldMPa}MC`, yieldMPa, group: 'high strength' }),
  ),
  { grade: '300W', yieldMPa: 300, group: 'carbon' },
  { grade: '350W', yieldMPa: 350, group: 'high strength' },
];

const byGrade = new Map(yieldRows.map((row) => [row.grade, row]));

/** The yield strength and group of a structural steel by its name; undefined for any other material. */
export function yieldOfGrade(name: string): YieldRow | undefined {
  return byGrade.get(name);
}
