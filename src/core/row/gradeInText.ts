import { ifRead } from '../inputError.js';
import { findGrade } from '../material/findGrade.js';
import type { Grade } from '../material/grade.js';
import { yieldOfGrade } from '../material/yieldStrength.js';
import { tradeText } from '../quantity/tradeText.js';
import { megapascalPerKsi } from '../quantity/units.js';
import type { Shop } from '../shop/readShop.js';

const longestText = 300;
/** What may be the name of a grade in a text: `A572-50`, `A992`, `S355J2`, `350W`. */
const named =
  /(?<![\p{L}\d])(?:a ?\d{2,4}m?(?:[ -]?(?:gr(?:ade)?\.? ?)?\d{2,3})?|s ?\d{3}(?: ?[a-z]\w{0,4})?|\d{3} ?(?:w|wt|at)|gr(?:ade)?\.? ?\d{2,3})(?![\p{L}\d])/gu;
/** What can only be one: `304 SS`, `T304`, `316L`, `AR400`, `6061-T6`. */
const surelyNamed =
  /(?<![\p{L}\d])(?:(?:ss|t)[ -]?3\d\dl?|type \d{3,4}l?|3\d\dl? ?ss|3\d\dl|ar ?-?\d{3}f?|[356]0\d\d-[hot]\d*|hardox ?\d*|cor-?ten|weathering)(?![\p{L}\d])/gu;
const families = [
  ['stainless', /stainless/],
  ['aluminum', /(?<!\p{L})alum/u],
  ['brass', /(?<!\p{L})brass/u],
] as const;
/** Steels that weather. */
const weathering = new Set(['A588', '350AT']);

/**
 * Whether a text beside a part names a grade, a material or a strength other than the part's, where that is known:
 * `use A572-50`, `304 SS`, `50 ksi`. Common practice, no source.
 */
export function namesOtherGrade(typed: string, grade: Grade | undefined, shop: Shop): boolean {
  if (grade === undefined) return false;
  const text = tradeText(typed.slice(0, longestText));
  const isOther = (name: string, isSure: boolean) => {
    const read = gradeOf(name.replace(/ ?ss$/, ''), shop);
    return read === undefined ? isSure : read.name !== grade.name;
  };
  return (
    families.some(([family, word]) => family !== grade.family && word.test(text)) ||
    (text.match(named) ?? []).some((name) => isOther(name, false)) ||
    (text.match(surelyNamed) ?? []).some((name) =>
      /^[cw]/.test(name) ? !weathering.has(grade.name) : isOther(name, true),
    ) ||
    [...text.matchAll(/(\d+) ?ksi/g)].some(([, ksi]) => !isStrengthOf(grade, Number(ksi)))
  );
}

/** Whether a strength in ksi, to the whole number, is one that the grade has. */
function isStrengthOf({ name, tensileMinMPa, tensileUpperMPa }: Grade, ksi: number): boolean {
  const strengths = [yieldOfGrade(name)?.yieldMPa, tensileMinMPa, tensileUpperMPa];
  return strengths.some((each) => each !== undefined && Math.round(each / megapascalPerKsi) === ksi);
}

function gradeOf(name: string, { grades, unit }: Shop): Grade | undefined {
  return ifRead(() => findGrade(name, 'Grade', grades, unit));
}
