import { atMost } from '../atMost.js';
import type { Grade } from '../material/grade.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue, ratioValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { bendGroups, bendMultiples, flangingAboveMm, flangingRadii } from './bendRadiusTables.js';

export type LeastBendRadius =
  | { known: true; leastMm: number; source: string }
  /** No table has the grade, or the table of the grade does not have the thickness. */
  | { known: false; why: 'grade' | 'thickness'; failsUnderMm?: number };

export interface BendRadiusInput {
  grade: Grade;
  thicknessMm: number;
  /** The bend line lies along the rolling direction, which for bars is their length. */
  alongRolling?: boolean;
  /** The part is hot-dip galvanized after bending. */
  galvanized?: boolean;
}

const alongRollingFactor = 1.5;
const galvanizedMultiple = 3;
/** A plate sold as 3/4 in or 8 mm may be typed with rounding. */
const nominalToleranceMm = 0.05;
const galvanizedSource = 'hot-dip galvanized work, 3 t (guidance of galvanizers, checked against a page)';

/**
 * The least inside radius of a cold bend, by grade and thickness: with a sharper one the outside may crack.
 *
 * Formula: ASTM grades r0 = m · t, m by group and thickness, times 1.5 where the bend lies along the rolling
 * direction; EN grades by table for both directions; galvanized at least 3 · t
 * @param input grade; thickness t in mm; whether the bend lies along the rolling direction, and whether the part is
 *   galvanized afterwards
 * @param working collects the step when given
 * @returns radius in mm with its source, or what is not known
 * Valid for thicknesses above zero; throws `invalid` otherwise. Known for Mild, A36, A529-50, A572-50, A588 and A514 in
 * every thickness, S235, S275 and S355 above 1 mm to 30 mm; not known for stainless steel, aluminum and the rest.
 * @example leastBendRadius({ grade: findGrade('A572-50', 'Grade'), thicknessMm: 30 }) // 60
 * Source: ASTM A6 Tables X4.1 (from memory) and X4.2; EN 10025-2, cold flanging; galvanized: guidance of galvanizers.
 */
export function leastBendRadius(input: BendRadiusInput, working?: Working): LeastBendRadius {
  const { grade, thicknessMm, galvanized = false } = input;
  requirePositive('Thickness', thicknessMm);
  const found = byGroup(input, working) ?? byFlanging(input, working);
  const galvanizedMm = galvanizedMultiple * thicknessMm;
  if (!galvanized || grade.family !== 'steel') return found;
  if (!found.known) return { ...found, failsUnderMm: galvanizedMm };
  if (found.leastMm >= galvanizedMm) return found;
  working?.step({
    title: 'Least inside radius, galvanized',
    formula: 'r0 = 3 · t',
    values: [lengthValue('t', 'thickness', thicknessMm)],
    result: lengthValue('r0', 'least inside radius', galvanizedMm),
    source: galvanizedSource,
  });
  return { known: true, leastMm: galvanizedMm, source: galvanizedSource };
}

function byGroup(input: BendRadiusInput, working?: Working): LeastBendRadius | undefined {
  const { grade, thicknessMm, alongRolling = false } = input;
  const group = bendGroups.find((each) => each.grade === grade.name)?.group;
  const row = bendMultiples.find(({ upToMm }) => atMost(thicknessMm, upToMm + nominalToleranceMm));
  if (!group || !row) return undefined;
  const multiple = row[group] * (alongRolling ? alongRollingFactor : 1);
  const leastMm = multiple * thicknessMm;
  const source = `ASTM A6 Table X4.2, group ${group} (checked against a reprint; the group from memory)`;
  working?.step({
    title: 'Least inside radius of the grade',
    formula: 'r0 = m · t',
    values: [
      textValue('grade', 'grade', grade.name),
      ratioValue('m', `multiple of the thickness, group ${group}`, multiple),
      lengthValue('t', 'thickness', thicknessMm),
    ],
    result: lengthValue('r0', 'least inside radius', leastMm),
    source,
  });
  return { known: true, leastMm, source };
}

function byFlanging(input: BendRadiusInput, working?: Working): LeastBendRadius {
  const { grade, thicknessMm, alongRolling = false } = input;
  const { name } = grade;
  if (name !== 'S235' && name !== 'S275' && name !== 'S355') return { known: false, why: 'grade' };
  const row = flangingRadii.find(({ upToMm }) => atMost(thicknessMm, upToMm + nominalToleranceMm));
  if (!row || thicknessMm <= flangingAboveMm) return { known: false, why: 'thickness' };
  const leastMm = row[name][alongRolling ? 1 : 0];
  const source = 'EN 10025-2, least inside radius for cold flanging (checked against a reprint)';
  working?.step({
    title: 'Least inside radius of the grade',
    formula: 'r0 by table',
    values: [textValue('grade', 'grade', name), lengthValue('t', 'thickness', thicknessMm)],
    result: lengthValue('r0', 'least inside radius', leastMm),
    source,
    cautions: ['The table is of grades with the suffix C, such as S235JRC.'],
  });
  return { known: true, leastMm, source };
}
