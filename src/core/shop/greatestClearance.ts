import { greatestClearanceMm } from '../rule/greatestClearance.js';
import type { Shop } from './readShop.js';
import { setting } from './setting.js';

/** The greatest die clearance by the job's specification, in the form the calculation takes it. */
export function greatestClearance(shop: Shop | undefined): { greatestMm?: number } {
  const greatestMm = greatestClearanceMm(setting(shop, 'jobSpec'));
  return greatestMm === undefined ? {} : { greatestMm };
}
