import { InputError } from '../inputError.js';
import type { Grade } from '../material/grade.js';
import { readGrade } from '../material/readGrade.js';
import type { CellValue } from '../quantity/cellValue.js';
import type { Shop } from './readShop.js';
import { nameKey } from './table.js';

/**
 * A grade by name or strength, the shop's own grades first. A grade of the shop's table that could not be
 * read refuses with the reason, and never falls back to a built-in grade of the same name.
 */
export function gradeOfShop(value: CellValue, argument: string, shop: Shop): Grade {
  const own = shop.ownGrades.find((grade) => nameKey(grade.name) === nameKey(value));
  if (own?.problem) throw new InputError(own.problem);
  return own?.grade ?? readGrade(value, argument, shop.grades, shop.unit);
}
