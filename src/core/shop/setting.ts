import { InputError } from '../inputError.js';
import type { Shop } from './readShop.js';
import { defaultSettings, type Settings } from './settings.js';

/** A setting of the shop, or its default where there is no shop. Refuses with the reason where its cell is unreadable. */
export function setting<Key extends keyof Settings>(shop: Shop | undefined, key: Key): Settings[Key] {
  if (!shop) return defaultSettings[key];
  const failure = shop.settings.bad[key];
  if (failure) throw new InputError(failure);
  return shop.settings.settings[key];
}
