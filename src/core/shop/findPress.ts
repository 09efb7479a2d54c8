import { refuse, refuseUnknown, sentenceInCell } from '../inputError.js';
import type { Press } from '../press/press.js';
import { quoted } from '../quantity/cellValue.js';
import type { Shop } from './readShop.js';
import { nameKey } from './table.js';

/** The press of a name, without regard to case and spacing. Refuses a name the shop has not, or has twice. */
export function findPress(name: string, argument: string, shop: Shop): Press {
  const press = shop.presses.find((each) => nameKey(each.name) === nameKey(name));
  if (!press) {
    const names = shop.presses.map((each) => each.name).join(', ') || 'none';
    return refuseUnknown(argument, name, `${quoted(name)} is not a press of the shop.`, `Presses: ${names}.`);
  }
  return press.problem === undefined ? press : refuse(argument, name, sentenceInCell(press.problem), '');
}
