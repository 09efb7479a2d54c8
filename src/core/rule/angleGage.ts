import { refuseUnknown } from '../inputError.js';
import { formatLength } from '../quantity/formatLength.js';
import { mmPer, mmPerInch } from '../quantity/units.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/** A usual gage, or the two of a leg with two lines: heel to the first, first to the second. */
export const gageLines = ['usual', 'first', 'second'] as const;
export type GageLine = (typeof gageLines)[number];

interface GageRow {
  leg: number;
  /** Missing where the table gives two lines only. */
  usual?: number;
  first?: number;
  second?: number;
}

/** Source: AISC Manual Table 1-7A, workable gages in angle legs, inches (from memory). */
const inchRows: readonly GageRow[] = [
  { leg: 8, usual: 4 + 1 / 2, first: 3, second: 3 },
  { leg: 7, usual: 4, first: 2 + 1 / 2, second: 3 },
  { leg: 6, usual: 3 + 1 / 2, first: 2 + 1 / 4, second: 2 + 1 / 2 },
  { leg: 5, usual: 3, first: 2, second: 1 + 3 / 4 },
  { leg: 4, usual: 2 + 1 / 2 },
  { leg: 3 + 1 / 2, usual: 2 },
  { leg: 3, usual: 1 + 3 / 4 },
  { leg: 2 + 1 / 2, usual: 1 + 3 / 8 },
  { leg: 2, usual: 1 + 1 / 8 },
  { leg: 1 + 3 / 4, usual: 1 },
  { leg: 1 + 1 / 2, usual: 7 / 8 },
  { leg: 1 + 3 / 8, usual: 7 / 8 },
  { leg: 1 + 1 / 4, usual: 3 / 4 },
  { leg: 1, usual: 5 / 8 },
];

/** Source: DIN 997, gages in legs of angles, mm (from memory): legs over 100 have two lines. */
const metricRows: readonly GageRow[] = [
  { leg: 25, usual: 15 },
  { leg: 30, usual: 17 },
  { leg: 35, usual: 18 },
  { leg: 40, usual: 22 },
  { leg: 45, usual: 25 },
  { leg: 50, usual: 30 },
  { leg: 55, usual: 30 },
  { leg: 60, usual: 35 },
  { leg: 65, usual: 35 },
  { leg: 70, usual: 40 },
  { leg: 75, usual: 40 },
  { leg: 80, usual: 45 },
  { leg: 90, usual: 50 },
  { leg: 100, usual: 55 },
  { leg: 110, first: 45, second: 25 },
  { leg: 120, first: 50, second: 30 },
  { leg: 130, first: 50, second: 40 },
  { leg: 140, first: 55, second: 40 },
  { leg: 150, first: 60, second: 45 },
  { leg: 160, first: 60, second: 55 },
  { leg: 180, first: 60, second: 75 },
  { leg: 200, first: 65, second: 85 },
];

const tables = [
  { unit: 'in', rows: inchRows, source: 'AISC Manual Table 1-7A, workable gages (from memory)' },
  { unit: 'mm', rows: metricRows, source: 'DIN 997 (from memory)' },
] as const;
const sameSizeMm = 0.02;

/**
 * The gage of a line of holes in the leg of an angle. Inch legs are looked up in the inch table, metric ones in
 * the metric table; no leg stands in both.
 *
 * Formula: g by table
 * @param input the leg in mm; which line: the usual gage, or the first (from the heel) or second (from the first)
 *   of a leg with two lines
 * @param working collects the step when given
 * @returns gage in mm
 * Valid for the legs of the tables. Throws `unknown` for others, for a second line where the leg has
 * one, and for the usual gage where it has two lines only.
 * @example angleGageMm({ legMm: 76.2, line: 'usual' }) // 44.45
 * Source: AISC Manual Table 1-7A; DIN 997 (both from memory).
 */
export function angleGageMm(input: { legMm: number; line: GageLine }, working?: Working): number {
  const { legMm, line } = input;
  requirePositive('Leg', legMm);
  const found = tables.flatMap(({ unit, rows, source }) =>
    rows
      .filter((row) => Math.abs(row.leg * mmPer[unit] - legMm) < sameSizeMm)
      .map((row) => ({ row, unit, source })),
  )[0];
  if (!found) return unknownLeg(legMm);
  const gage = found.row[line];
  if (gage === undefined) {
    const leg = `${formatLength(legMm, found.unit)} ${found.unit}`;
    if (line === 'usual') {
      const problem = `a leg of ${leg} has two lines of holes in the table.`;
      return refuseUnknown('Line', line, problem, 'Write first or second, or give the gage itself.');
    }
    const problem = `a leg of ${leg} has one line of holes in the table.`;
    return refuseUnknown(
      'Line',
      line,
      problem,
      'Write usual, or give a leg of 5 in or more, or over 100 mm.',
    );
  }
  const gageMm = gage * mmPer[found.unit];
  working?.step({
    title: line === 'usual' ? 'Usual gage' : `Gage of the ${line} line`,
    formula: 'g by table',
    values: [lengthValue('leg', 'leg of the angle', legMm)],
    result: lengthValue('g', line === 'second' ? 'from the first line' : 'from the heel', gageMm),
    source: found.source,
  });
  return gageMm;
}

function unknownLeg(legMm: number): never {
  const inches = inchRows.map(({ leg }) => formatLength(leg * mmPerInch, 'in')).join(', ');
  const metric = metricRows.map(({ leg }) => leg).join(', ');
  const received = formatLength(legMm, 'mm');
  return refuseUnknown(
    'Leg',
    received,
    `no gage is tabled for a leg of ${received} mm (${formatLength(legMm, 'in')} in).`,
    `Legs in the tables: ${inches} in; ${metric} mm.`,
  );
}
