import type { Grade } from '../material/grade.js';
import { mmPerInch } from '../quantity/units.js';
import { requirePositive } from '../requireRange.js';
import type { Working } from '../working/working.js';

/** Total clearance by thickness, plate and structural practice, in inches. */
const plateRows = [
  { upToThicknessIn: 1 / 8, totalIn: 1 / 64 },
  { upToThicknessIn: 1 / 2, totalIn: 1 / 32 },
  { upToThicknessIn: Infinity, totalIn: 1 / 16 },
];
/** 3.2 mm is sold as 1/8 in and 12.7 mm may be typed 12.72: nominal thicknesses stay in their row. */
const nominalToleranceMm = 0.03;

/** Clearance per side as a share of the thickness: Groover's allowances, three material groups. */
const sheetAllowance = { soft: 0.045, medium: 0.06, hard: 0.075 } as const;
const hardSteelFromShearMPa = 300;
const hardAluminumFromShearMPa = 190;
const shearShare = 0.75;

/** A total clearance outside this share of the thickness is unusual (common practice). */
const usualShare = { least: 0.05, greatest: 0.25 };

/**
 * The total die clearance, both sides together: die opening minus punch.
 *
 * Formula: plate: 1/64 in to t = 1/8 in, 1/32 in to 1/2 in, 1/16 in above; sheet: c = 2 · a · t with a = 0.045 soft
 * aluminum, 0.060 hard aluminum, brass, copper, soft steel, soft stainless; 0.075 harder steel
 * With `greatestMm` the total is cut to it: under EN 1090-2 the mean of entry and exit diameter must stay within
 * 0.5 mm of the nominal, so 1.0 mm.
 * @param input thickness t in mm, method, grade (it selects a in the sheet method), greatest total in mm
 * @param working collects the step when given
 * @returns total clearance in mm
 * Valid for thicknesses above zero; throws `invalid` otherwise.
 * @example totalDieClearanceMm({ thicknessMm: 12, method: 'plate', grade: findGrade('A36', 'Grade') }) // 0.794
 * Source: plate: common practice. Sheet: Groover, Fundamentals of Modern Manufacturing, allowances for three
 *   material groups (from memory); which structural grades count as hard: common practice.
 */
export function totalDieClearanceMm(
  input: { thicknessMm: number; method: 'plate' | 'sheet'; grade: Grade; greatestMm?: number },
  working?: Working,
): number {
  const { thicknessMm, method, grade, greatestMm } = input;
  requirePositive('Thickness', thicknessMm);
  const totalMm =
    method === 'sheet' ? sheetClearance(thicknessMm, grade, working) : plateClearance(thicknessMm, working);
  if (greatestMm === undefined || totalMm <= greatestMm) return totalMm;
  working?.step({
    title: 'Greatest clearance',
    formula: 'c ≤ greatest',
    values: [{ symbol: 'c', meaning: 'total die clearance by practice', kind: 'length', value: totalMm }],
    result: { symbol: 'c', meaning: 'total die clearance, both sides', kind: 'length', value: greatestMm },
    source: 'EN 1090-2, tolerance of punched holes (from memory)',
  });
  return greatestMm;
}

function plateClearance(thicknessMm: number, working?: Working): number {
  const row = plateRows.find((each) => thicknessMm <= each.upToThicknessIn * mmPerInch + nominalToleranceMm);
  const totalMm = (row?.totalIn ?? 1 / 16) * mmPerInch;
  const share = totalMm / thicknessMm;
  const usual = share >= usualShare.least && share <= usualShare.greatest;
  working?.step({
    title: 'Total die clearance',
    formula: 'by thickness: 1/64 in to 1/8 in, 1/32 in to 1/2 in, 1/16 in above',
    values: [{ symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm }],
    result: { symbol: 'c', meaning: 'total die clearance, both sides', kind: 'length', value: totalMm },
    source: 'common practice, plate and structural',
    ...(usual ? {} : { cautions: ['The clearance is outside the usual 5 to 25% of the thickness.'] }),
  });
  return totalMm;
}

function sheetClearance(thicknessMm: number, grade: Grade, working?: Working): number {
  const allowance = sheetAllowance[hardness(grade)];
  const totalMm = 2 * allowance * thicknessMm;
  working?.step({
    title: 'Total die clearance',
    formula: 'c = 2 · a · t',
    values: [
      { symbol: 'a', meaning: `allowance per side, ${grade.name}`, kind: 'ratio', value: allowance },
      { symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm },
    ],
    result: { symbol: 'c', meaning: 'total die clearance, both sides', kind: 'length', value: totalMm },
    source: 'Groover, Fundamentals of Modern Manufacturing, clearance allowances (from memory)',
  });
  return totalMm;
}

function hardness(grade: Grade): keyof typeof sheetAllowance {
  const shearMPa = grade.shearMPa ?? shearShare * (grade.tensileUpperMPa ?? grade.tensileMinMPa ?? Infinity);
  if (grade.family === 'steel') return shearMPa >= hardSteelFromShearMPa ? 'hard' : 'medium';
  if (grade.family === 'aluminum') return shearMPa >= hardAluminumFromShearMPa ? 'medium' : 'soft';
  return 'medium';
}
