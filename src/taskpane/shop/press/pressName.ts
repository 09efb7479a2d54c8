import { nameKey } from '../../../core/shop/table.js';
import type { ShopTable } from '../../shared/shopState.js';

const longestName = 40;
/** Words that cells of the shop give a meaning of their own. */
const taken = new Set(['any', 'none', 'yes', 'no', 'item', 'unit']);

/** Why a press cannot have a name; undefined for a good one. `own` is the name it has already. */
export function nameProblem(name: string, { values }: ShopTable, own?: string): string | undefined {
  const typed = name.trim();
  if (typed === '') return 'Give the press a name: the rows of a list use it.';
  if (typed.length > longestName) return `A name has at most ${longestName} characters.`;
  if (/^[\d\s.,/'"-]*$/.test(typed))
    return `'${typed}' is a number: give the press a name with a letter in it, for example Bay ${typed}.`;
  if (taken.has(nameKey(typed)))
    return `'${typed}' means something else in the shop's tables: choose another name.`;
  const known = values[0]?.some((heading) => nameKey(heading) === nameKey(typed));
  if (!known || (own !== undefined && nameKey(own) === nameKey(typed))) return undefined;
  return `The Presses table has a column ${typed} already. Give each press its own name.`;
}
