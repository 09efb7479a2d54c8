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
 * Source: ASTM A36, A572, A529, A588, A992, A514; EN 10025-2 and EN 10025-3 to 16 mm; CSA G40.21 (from memory). Which
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
  { grade: '300W', yieldMPa: 300, group: 'carbon' },
  { grade: '350W', yieldMPa: 350, group: 'high strength' },
];

const byGrade = new Map(yieldRows.map((row) => [row.grade, row]));

/** The yield strength and group of a structural steel by its name; undefined for any other material. */
export function yieldOfGrade(name: string): YieldRow | undefined {
  return byGrade.get(name);
}
