import type { Grade } from '../material/grade.js';
import { mmPerInch } from '../quantity/units.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue, ratioValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/** An air bend takes about this share of the V opening as its inside radius (common practice). */
const radiusShare = 1 / 6;
/** The flange must rest on both shoulders of the V (common practice). */
const flangeShare = 0.77;
const alongRollingFactor = 1.5;
const galvanizedMultiple = 3;

/**
 * Source: ASTM A6 Table X4.2, suggested least inside radius of cold bends, as a multiple of the thickness (held
 * against a reprint); that the row of A514 ends at 3/4 in is from memory.
 */
const radiusRows: readonly { grade: string; multiple: number; upToThicknessIn: number }[] = [
  { grade: 'A36', multiple: 1.5, upToThicknessIn: Infinity },
  { grade: 'A572-50', multiple: 1.5, upToThicknessIn: Infinity },
  { grade: 'A514', multiple: 1.75, upToThicknessIn: 3 / 4 },
];
const radiusSource = 'ASTM A6 Table X4.2 (held against a reprint)';

/** The inside radius an air bend takes in a V opening, mm: V / 6. Common practice, no source. */
export function insideRadiusOfVeeMm(veeMm: number): number {
  return radiusShare * veeMm;
}

export interface BendLimits {
  insideRadiusMm: number;
  /** Undefined where no source gives one for the grade. */
  leastInsideRadiusMm?: number;
  leastFlangeMm: number;
}

/**
 * What an air bend in a V die makes of a plate: its inside radius, the least the grade allows, the least flange.
 *
 * Formula: r = V / 6; r ≥ m · t, m by grade, times 1.5 along the rolling direction, at least 3 if galvanized;
 * b = 0.77 · V
 * @param input grade; thickness t and V opening in mm; whether the bend runs along the rolling direction, and
 *   whether the part is galvanized afterwards
 * @param working collects the steps when given; a radius that is too small is a caution there
 * @returns inside radius, least inside radius and least flange in mm
 * Valid for sizes above zero; throws `invalid` otherwise. The least radius is known for A36, A572-50 and, to 3/4 in,
 * A514.
 * @example bendLimits({ grade: findGrade('A36', 'Grade'), thicknessMm: 6, veeMm: 60 }) // 10, 9 and 46.2
 * Source: ASTM A6 Table X4.2; radius of the bend, flange: common practice.
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
  const { grade, thicknessMm, veeMm } = input;
  requirePositive('Thickness', thicknessMm);
  requirePositive('V opening', veeMm);
  const vee = lengthValue('V', 'V opening', veeMm);
  const leastFlangeMm = flangeShare * veeMm;
  working?.step({
    title: 'Least flange',
    formula: 'b = 0.77 · V',
    values: [vee],
    result: lengthValue('b', 'least flange, outside', leastFlangeMm),
    source: 'common practice',
  });
  const leastInsideRadiusMm = leastRadius(input, working);
  const insideRadiusMm = insideRadiusOfVeeMm(veeMm);
  const cautions = radiusCautions(grade, insideRadiusMm, leastInsideRadiusMm);
  working?.step({
    title: 'Inside radius of the bend',
    formula: 'r = V / 6',
    values: [vee],
    result: lengthValue('r', 'inside radius', insideRadiusMm),
    source: 'common practice',
    ...(cautions.length > 0 ? { cautions } : {}),
  });
  const limits = { insideRadiusMm, leastFlangeMm };
  return leastInsideRadiusMm === undefined ? limits : { ...limits, leastInsideRadiusMm };
}

function leastRadius(input: Parameters<typeof bendLimits>[0], working?: Working): number | undefined {
  const { grade, thicknessMm, alongRolling = false, galvanized = false } = input;
  const row = radiusRows.find(
    (each) => each.grade === grade.name && thicknessMm <= each.upToThicknessIn * mmPerInch + 0.05,
  );
  if (!row) return undefined;
  const rolled = row.multiple * (alongRolling ? alongRollingFactor : 1);
  const multiple = galvanized ? Math.max(rolled, galvanizedMultiple) : rolled;
  const leastMm = multiple * thicknessMm;
  const caution = 'Times 1.5 along the rolling direction; 3 t if galvanized.';
  working?.step({
    title: 'Least inside radius of the grade',
    formula: 'r0 = m · t',
    values: [
      textValue('grade', 'grade', grade.name),
      ratioValue('m', 'multiple of the thickness', multiple),
      lengthValue('t', 'thickness', thicknessMm),
    ],
    result: lengthValue('r0', 'least inside radius', leastMm),
    source: radiusSource,
    ...(alongRolling && galvanized ? {} : { cautions: [caution] }),
  });
  return leastMm;
}

function radiusCautions(grade: Grade, insideMm: number, leastMm: number | undefined): string[] {
  if (leastMm === undefined) {
    return [`No least inside radius is known here for ${grade.name} in this thickness: ask the mill.`];
  }
  if (insideMm >= leastMm * (1 - 1e-9)) return [];
  return [`The bend may crack: its inside radius is under the least of ${grade.name}. Use a wider V.`];
}
