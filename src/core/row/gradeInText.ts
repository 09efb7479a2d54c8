import { ifRead } from '../inputError.js';
import { findGrade } from '../material/findGrade.js';
import type { Grade } from '../material/grade.js';
import { tradeText } from '../quantity/tradeText.js';
import type { Shop } from '../shop/readShop.js';

const longestText = 300;
/** What may be the name of a grade in a text: `A572-50`, `A992`, `S355J2`, `350W`. */
const named =
  /(?<![\p{L}\d])(?:a ?\d{2,4}m?(?:[ -]?(?:gr(?:ade)?\.? ?)?\d{2,3})?|s ?\d{3}(?: ?[a-z]\w{0,4})?|\d{3} ?(?:w|wt|at)|gr(?:ade)?\.? ?\d{2,3})(?![\p{L}\d])/gu;

/** Whether a text beside a part names a grade other than the part's, where that is known: `use A572-50`. Common practice, no source. */
export function namesOtherGrade(text: string, grade: Grade | undefined, shop: Shop): boolean {
  if (grade === undefined) return false;
  const names = tradeText(text.slice(0, longestText)).match(named) ?? [];
  return names.some((name) => {
    const read = gradeOf(name, shop);
    return read !== undefined && read.name !== grade.name;
  });
}

function gradeOf(name: string, { grades, unit }: Shop): Grade | undefined {
  return ifRead(() => findGrade(name, 'Grade', grades, unit));
}
