import type { Finding } from '../check/finding.js';
import type { Grade } from '../material/grade.js';
import { upperTensileMPa } from '../material/upperTensile.js';
import { limitOf, withinLimit } from '../press/limit.js';
import { type Press, pressValue } from '../press/press.js';
import type { Working } from '../working/working.js';

/**
 * Whether the shear blades of a press may cut a grade: its greatest tensile strength against the limit of their maker. A
 * press that gives no such limit is not held to one; a grade of which only the shear strength is known is not checked.
 * Source: common practice, no source; the limit is the maker's.
 */
export function bladeFindings(press: Press, grade: Grade, thicknessMm: number, working?: Working): Finding[] {
  const item = 'bladeMaterialLimit';
  const { state } = pressValue(press, item);
  if (state === 'unknown' || state === 'none') return [];
  const limit = limitOf(press, item);
  if (typeof limit !== 'number') return [limit];
  if (grade.tensileUpperMPa === undefined) {
    const fact = { rule: 'not held', why: 'tensile strength not known', grade: grade.name } as const;
    return [{ ...fact, outcome: 'open', verdict: 'Not checked', press: press.name }];
  }
  const given = upperTensileMPa({ grade, thicknessMm });
  const sized = { is: 'tensile strength', grade: grade.name } as const;
  return [withinLimit(press, { item, sized, given, over: 'Over capacity' }, working)];
}
