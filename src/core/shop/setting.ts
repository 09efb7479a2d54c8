import { refuse } from '../inputError.js';
import type { Shop } from './readShop.js';
import { defaultSettings, type Settings } from './settings.js';

/** A setting of the shop, or its default where there is no shop. Refuses with the reason where its cell is unreadable. */
export function setting<Key extends keyof Settings>(shop: Shop | undefined, key: Key): Settings[Key] {
  if (!shop) return defaultSettings[key];
  const problem = shop.settings.bad[key];
  if (problem !== undefined) refuse('Shop', '', problem, '');
  return shop.settings.settings[key];
}
