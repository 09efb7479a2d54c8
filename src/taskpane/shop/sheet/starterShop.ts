import type { LengthUnit } from '../../../core/quantity/units.js';
import { readShop, type Shop } from '../../../core/shop/readShop.js';
import { starterPresses, starterSettings } from './starter.js';

/** The invented shop, for trying things before there is a shop sheet. */
export function starterShop(unit: LengthUnit): Shop {
  return readShop({ presses: starterPresses(unit), settings: starterSettings(unit) });
}
