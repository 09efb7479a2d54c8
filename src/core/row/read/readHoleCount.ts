import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { readCount } from '../../quantity/readCount.js';
import type { HoleGroup } from '../job/rowJob.js';

/** The holes of a group, those at both ends together. */
export type HoleCount = Pick<HoleGroup, 'count' | 'eachEnd'>;

const greatestCount = 999;
const allowed = 'Write a whole number of holes, or 2 each end.';
const eachEndWords = String.raw`(?:holes? )?(?:at |@ ?)?(?:(?:each|ea\.?|per|every)[ -]end|e\.?e\.?)(?: typ\.?)?`;
const bothEnds = /^(\d{1,3}) ?(?:holes? )?(?:at )?both ends$/i;
const eachEnd = new RegExp(String.raw`^(?:(\d{1,3})[ -]?${eachEndWords}|${eachEndWords} ?(\d{1,3}))$`, 'i');

/** Reads how many holes: `4`, or `2 each end`, which is four, two of them at each end. */
export function readHoleCount(value: CellValue, argument: string): HoleCount {
  const text = typeof value === 'string' ? value.trim().replace(/\s+/g, ' ') : '';
  const [, both] = bothEnds.exec(text) ?? [];
  if (both !== undefined) {
    const problem = `${quoted(value)} may be ${both} at each end or ${both} in all.`;
    return refuse(argument, text, problem, `Write ${both} each end, or ${both}.`);
  }
  const each = eachEnd.exec(text);
  const number = each ? 2 * Number(each[1] ?? each[2]) : readCount(value, argument, allowed);
  if (!Number.isInteger(number) || number < 1 || number > greatestCount) {
    return refuse(argument, String(value), `${quoted(value)} is not a number of holes.`, allowed);
  }
  return each ? { count: number, eachEnd: true } : { count: number };
}
