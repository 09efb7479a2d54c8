import { refuse } from '../../core/inputError.js';
import { type CellValue, quoted } from '../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shop } from '../../core/shop/readShop.js';
import { readStamp } from '../../core/shop/stamp.js';
import { nameKey } from '../../core/shop/table.js';
import type { ScalarArgument } from './argument.js';
import { ShopNotRegistered, type ShopRegistry } from '../shop/registry.js';

/** How a call names its shop: by the stamp, or only a unit. */
export interface ShopReference {
  unit: LengthUnit;
  shop: Shop | undefined;
}

/** Marks the argument that names the shop; the wrapper reads it before all others. */
export interface ShopArgument<Value> extends ScalarArgument<Value> {
  kind: 'shop' | 'shop or unit';
}

/** The shop cell, where a unit is enough. */
export const shopOrUnitArgument: ShopArgument<Shop | undefined> = {
  kind: 'shop or unit',
  meaning: 'The shop cell (ShopStamp), or "in" or "mm"; inches when left out',
  dimensionality: 'scalar',
  optional: true,
  omitted: 'in',
  read: (_, { shop }) => shop,
};

/** The shop cell, where the shop's data are needed. */
export const shopArgument: ShopArgument<Shop> = {
  kind: 'shop',
  meaning: 'The shop cell (ShopStamp)',
  dimensionality: 'scalar',
  optional: false,
  read: (value, { argument, shop }) => shop ?? notTheShop(value, argument, true),
};

function notTheShop(value: CellValue, argument: string, needed: boolean): never {
  const [problem, fix] = needed
    ? ['is not the shop cell.', 'Give the cell named ShopStamp.']
    : ['is neither the shop cell nor a unit.', 'Give the cell named ShopStamp, or "in" or "mm".'];
  return refuse(argument, String(value), `${quoted(value)} ${problem}`, fix);
}

/**
 * The shop a call names. Throws `ShopNotRegistered` for a stamp that no shop of this runtime has: the
 * wrapper then waits for one shared reading of the workbook.
 */
export function readShopReference(
  value: CellValue,
  argument: string,
  shops: ShopRegistry,
  needed: boolean,
): ShopReference {
  const text = nameKey(value);
  if (text === '') return { unit: 'in', shop: undefined };
  if (text === 'in' || text === 'mm') return { unit: text, shop: undefined };
  const stamp = typeof value === 'string' ? readStamp(value) : undefined;
  if (!stamp) return notTheShop(value, argument, needed);
  const shop = shops.find(stamp.hash);
  if (!shop) throw new ShopNotRegistered(stamp.hash);
  return { unit: shop.unit, shop };
}
