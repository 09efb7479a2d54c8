import { greatestClearanceMm } from '../tooling/dieClearance.js';
import type { Shop } from './readShop.js';
import { setting } from './setting.js';

/** The greatest die clearance of the shop's code, in the form the calculation takes it. */
export function greatestClearance(shop: Shop | undefined): { greatestMm?: number } {
  const greatestMm = greatestClearanceMm(setting(shop, 'edgeCode'));
  return greatestMm === undefined ? {} : { greatestMm };
}
