import { type PressFinding, refusal } from '../check/finding.js';
import type { Grade } from '../material/grade.js';
import { upperTensileMPa } from '../material/upperTensile.js';
import type { Working } from '../working/working.js';
import { governsOf, limitStep, roundingShare } from './limit.js';
import { type Press, pressValue } from './press.js';

/**
 * A grade against what the shear blades of a press may cut. Bars come in stronger than the minimum, so the upper bound of the
 * tensile strength is held. A blank limit is none: few plates state one, and the force is held anyway.
 *
 * Formula: Rm ≤ limit
 * @param press the press
 * @param cut the grade; the thickness in mm, which selects the bound under 3 mm
 * @param working collects the steps when given
 * @returns a finding where the press states a limit; open where the grade has no upper tensile strength
 * Valid for every grade. Throws `invalid` for a thickness that is not above zero.
 * @example bladeFindings(press, { grade: findGrade('S355', 'Grade'), thicknessMm: 10 })
 * Source: the maker of the blades, as given in the Presses table.
 */
export function bladeFindings(
  press: Press,
  cut: { grade: Grade; thicknessMm: number },
  working?: Working,
): PressFinding[] {
  const item = 'bladeMaterialLimit';
  const stated = pressValue(press, item);
  if (stated.state === 'bad') {
    return [refusal(stated.failure, governsOf(item), { press: press.name, ofPressCell: true })];
  }
  if (stated.state !== 'value') return [];
  const limit = stated.value;
  const fact = { rule: 'blade material', press: press.name, grade: cut.grade.name, limit } as const;
  if (cut.grade.tensileUpperMPa === undefined) {
    return [{ ...fact, outcome: 'open', verdict: 'Not checked' }];
  }
  const given = upperTensileMPa(cut, working);
  const held = given <= limit * (1 + roundingShare);
  const verdict = held ? 'OK' : 'Over capacity';
  const meaning = `upper tensile strength of ${cut.grade.name}`;
  limitStep(working, press, item, { kind: 'stress', value: given, meaning }, '≤', verdict);
  return [{ ...fact, given, outcome: held ? 'held' : 'failed', verdict }];
}
