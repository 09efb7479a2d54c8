import { ifRead } from '../inputError.js';
import { findGrade } from '../material/findGrade.js';
import type { Grade } from '../material/grade.js';
import { yieldOfGrade } from '../material/yieldStrength.js';
import { tradeText } from '../quantity/tradeText.js';
import { megapascalPerKsi } from '../quantity/units.js';
import type { Shop } from '../shop/readShop.js';

const longestText = 300;
/** What may be the name of a grade in a text, `A572-50`, `350W`, or behind it can be nothing else: `304 SS`, `AR400`. */
const named =
  /(?<![\p{L}\d])(?:a ?\d{2,4}m?(?:[ -]?(?:gr(?:ade)?\.? ?)?\d{2,3})?|s ?\d{3}(?: ?[a-z]\w{0,4})?|\d{3} ?(?:w|wt|at)|gr(?:ade)?\.? ?\d{2,3}|((?:ss|t)[ -]?3\d\dl?|type \d{3,4}l?|3\d\dl?(?= ?ss)|3\d\dl|ar ?\d{3}|[356]0\d\d-[ht]\d*))(?![\p{L}\d])/gu;

/**
 * Whether a text beside a part names a grade, a material or a yield strength other than the part's, where that is known:
 * `use A572-50`, `304 SS`, `50 ksi`. Common practice, no source.
 */
export function namesOtherGrade(typed: string, grade: Grade | undefined, shop: Shop): boolean {
  if (grade === undefined) return false;
  const text = tradeText(typed.slice(0, longestText));
  const [, material] = /(?<!\p{L})(stainless|alum|cor-?ten|weathering)/u.exec(text) ?? [];
  const [, ksi] = /(\d+) ?ksi/.exec(text) ?? [];
  const { name, family } = grade;
  return (
    (material !== undefined &&
      !family.startsWith(material) &&
      !(/^[cw]/.test(material) && name === 'A588')) ||
    (ksi !== undefined &&
      Math.round((yieldOfGrade(name)?.yieldMPa ?? 0) / megapascalPerKsi) !== Number(ksi)) ||
    [...text.matchAll(named)].some(([each, sure]) => {
      const read = gradeOf(each, shop);
      return read === undefined ? sure !== undefined : read.name !== name;
    })
  );
}

function gradeOf(name: string, { grades, unit }: Shop): Grade | undefined {
  return ifRead(() => findGrade(name, 'Grade', grades, unit));
}
