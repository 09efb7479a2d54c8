import { refuseUnknown } from '../inputError.js';
import { didYouMean } from '../nearNames.js';
import { quoted } from '../quantity/cellValue.js';
import { memo } from '../quantity/memo.js';
import type { LengthUnit } from '../quantity/units.js';
import type { Grade } from './grade.js';
import { gradeKey, plainKey } from './gradeKey.js';
import { builtInGrades } from './gradeTable.js';

const longestName = 60;
const rememberedKey = memo<string>();
const builtInByKey = new Map(builtInGrades.map((grade) => [gradeKey(grade.name), grade]));
/** The index of each list of own grades, held as long as the list itself. */
const ownIndexes = new WeakMap<readonly Grade[], Map<string, Grade>>();

/**
 * The grade of a name: the shop's own first, then the built-in ones. Names are read loosely (`A36`,
 * `astm a572 gr 50`, `S355J2`); an unknown name is refused with names like it and never read as another grade.
 *
 * @param text the name as typed
 * @param argument what the name came from, for the refusal
 * @param own the shop's own grades
 * @param unit the shop's unit, for the strength that is shown as an example
 * @returns the grade
 * Throws `unknown` for a name in neither list.
 * @example findGrade('a572 gr 50', 'Grade').name // 'A572-50'
 * Source: the names of the product standards; loose spellings: common practice.
 */
export function findGrade(
  text: string,
  argument: string,
  own: readonly Grade[] = [],
  unit: LengthUnit = 'in',
): Grade {
  if (text.length > longestName) return unknownGrade(text, argument, own, unit);
  const ownIndex = indexOf(own);
  const key = rememberedKey(text, () => gradeKey(text));
  return (
    ownIndex.get(plainKey(text)) ??
    ownIndex.get(key) ??
    builtInByKey.get(key) ??
    unknownGrade(text, argument, own, unit)
  );
}

function indexOf(own: readonly Grade[]): Map<string, Grade> {
  let index = ownIndexes.get(own);
  if (!index) {
    index = new Map();
    // The name as written wins over a loose reading of another entry.
    for (const grade of own) index.set(gradeKey(grade.name), grade);
    for (const grade of own) index.set(plainKey(grade.name), grade);
    ownIndexes.set(own, index);
  }
  return index;
}

/** A grade that shops of the unit use every day. */
export function gradeExample(unit: LengthUnit): string {
  return unit === 'in' ? 'A36' : 'S235';
}

/** A strength as it may be typed for a grade. */
export function strengthExample(unit: LengthUnit): string {
  return `its highest tensile strength such as "tensile ${unit === 'in' ? '65 ksi' : '450 MPa'}"`;
}

/** Whether a name is like what was typed by more than its digits: `AR400` is not `SS400`, nor `1045` `1018`. */
function isLike(typed: string, name: string): boolean {
  const [each, key] = [gradeKey(typed), gradeKey(name)];
  return /^\d/.test(key) ? key.startsWith(each) : !/\d/.test(each) || lettersOf(key) === lettersOf(each);
}

/** What stands before the digits. */
const lettersOf = (key: string) => key.replace(/\d.*$/, '');

function unknownGrade(text: string, argument: string, own: readonly Grade[], unit: LengthUnit): never {
  const names = [...own, ...builtInGrades].map((grade) => grade.name);
  const typed = text.slice(0, longestName);
  const meant = didYouMean(
    typed,
    names.filter((name) => isLike(typed, name)),
    gradeKey,
  );
  const hint = meant ? `${meant} Or write` : `Write a grade such as ${gradeExample(unit)}, or`;
  return refuseUnknown(
    argument,
    text,
    `${quoted(text)} is not a known grade.`,
    `${hint} ${strengthExample(unit)}, or add the grade to the shop's own.`,
  );
}
