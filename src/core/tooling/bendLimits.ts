import type { Grade } from '../material/grade.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { type LeastBendRadius, leastBendRadius } from './leastBendRadius.js';
import { leastFlangeMm } from './leastFlange.js';

/** An air bend takes about this share of the V opening as its inside radius (common practice). */
const radiusShare = 1 / 6;

/** The inside radius an air bend takes in a V opening, mm: V / 6. Common practice, no source. */
export function insideRadiusOfVeeMm(veeMm: number): number {
  return radiusShare * veeMm;
}

/** The V opening in mm in which an air bend takes an inside radius: V = 6 · r. Common practice, no source. */
export function veeOfInsideRadiusMm(insideRadiusMm: number): number {
  return insideRadiusMm / radiusShare;
}

export interface BendLimits {
  insideRadiusMm: number;
  leastRadius: LeastBendRadius;
  leastFlangeMm: number;
}

/**
 * What an air bend in a V die makes of a plate: its inside radius, the least the grade allows, the least flange.
 *
 * Formula: r = V / 6; r0 by grade and thickness; b = 0.77 · V
 * @param input grade; thickness t and V opening in mm; whether the bend runs along the rolling direction, and
 *   whether the part is galvanized afterwards
 * @param working collects the steps when given; a radius that is too small is a caution there
 * @returns inside radius and least flange in mm; the least inside radius, or what is not known of it
 * Valid for sizes above zero; throws `invalid` otherwise.
 * @example bendLimits({ grade: findGrade('A36', 'Grade'), thicknessMm: 6, veeMm: 60 }).insideRadiusMm // 10
 * Source: ASTM A6 Table X4.2; EN 10025-2, cold flanging; radius of the bend, flange: common practice.
 */
export function bendLimits(
  input: {
    grade: Grade;
    thicknessMm: number;
    veeMm: number;
    alongRolling?: boolean;
    galvanized?: boolean;
  },
  working?: Working,
): BendLimits {
  const { thicknessMm, veeMm } = input;
  requirePositive('Thickness', thicknessMm);
  const flangeMm = leastFlangeMm({ veeMm }, working);
  const leastRadius = leastBendRadius(input, working);
  const insideRadiusMm = insideRadiusOfVeeMm(veeMm);
  const cautions = radiusCautions(input, insideRadiusMm, leastRadius);
  working?.step({
    title: 'Inside radius of the bend',
    formula: 'r = V / 6',
    values: [lengthValue('V', 'V opening', veeMm)],
    result: lengthValue('r', 'inside radius', insideRadiusMm),
    source: 'common practice',
    ...(cautions.length > 0 ? { cautions } : {}),
  });
  return { insideRadiusMm, leastRadius, leastFlangeMm: flangeMm };
}

function radiusCautions(
  input: { grade: Grade; alongRolling?: boolean; galvanized?: boolean },
  insideMm: number,
  least: LeastBendRadius,
): string[] {
  const { name } = input.grade;
  if (!least.known) {
    return [`No least inside radius is known here for ${name} in this thickness: ask the mill.`];
  }
  const open = [
    ...(input.alongRolling === undefined ? ['a bend along the rolling direction'] : []),
    ...(input.galvanized === undefined ? ['a part to be galvanized (3 t)'] : []),
  ];
  const more = open.length === 0 ? [] : [`The least radius is larger for ${open.join(' and for ')}.`];
  if (insideMm >= least.leastMm * (1 - 1e-9)) return more;
  return [`The bend may crack: its inside radius is under the least of ${name}. Use a wider V.`, ...more];
}
