import type { LengthUnit } from '../quantity/units.js';
import { mmPerInch } from '../quantity/units.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import type { EdgeCode } from './edgeDistance.js';

const thicknessFactor = 12;
const ceilingMm: Record<LengthUnit, number> = { in: 6 * mmPerInch, mm: 150 };
const enFactor = 4;
const enAdditionMm = 40;

const sources: Record<Exclude<EdgeCode, 'EN'>, string> = {
  AISC: 'AISC 360-22 J3.6 (checked against a reprint)',
  'AISC 360-22': 'AISC 360-22 J3.6 (checked against a reprint)',
  CSA: 'CSA S16, maximum edge distance (from memory)',
  AS: 'AS 4100, maximum edge distance (from memory)',
};

/**
 * The greatest distance from the center of a bolt to the nearest edge: farther, the plies gape and rust. Beyond it a
 * caution is due, never a refusal.
 *
 * Formula: AISC, CSA, AS 12 · t, at most 6 in (150 mm); EN 4 · t + 40 mm
 * @param input thickness t of the thinner outer ply in mm; the code; the system of the bolt (6 in or 150 mm)
 * @param working collects the step when given
 * @returns distance in mm, center to edge
 * Valid for thicknesses above zero; throws `invalid` otherwise. EN's limit is for steel exposed to the weather.
 * @example greatestEdgeDistanceMm({ thicknessMm: 10, code: 'EN', system: 'mm' }) // 80
 * Source: AISC 360-22 J3.6; EN 1993-1-8 Table 3.3; CSA S16 and AS 4100 (from memory).
 */
export function greatestEdgeDistanceMm(
  input: { thicknessMm: number; code: EdgeCode; system: LengthUnit },
  working?: Working,
): number {
  const { thicknessMm, code, system } = input;
  requirePositive('Thickness', thicknessMm);
  const en = code === 'EN';
  const greatestMm = en
    ? enFactor * thicknessMm + enAdditionMm
    : Math.min(thicknessFactor * thicknessMm, ceilingMm[system]);
  const ceiling = system === 'in' ? '6 in' : '150 mm';
  working?.step({
    title: 'Greatest edge distance',
    formula: en ? 'e = 4 · t + 40 mm' : `e = 12 · t, at most ${ceiling}`,
    values: [lengthValue('t', 'thickness', thicknessMm)],
    result: lengthValue('e', 'greatest distance, center to edge', greatestMm),
    source: en ? 'EN 1993-1-8 Table 3.3, e1 and e2 of steel exposed to the weather' : sources[code],
  });
  return greatestMm;
}
