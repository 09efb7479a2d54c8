import type { CellValue } from '../../src/core/quantity/cellValue.js';
import { readShop, type Shop, type ShopTables } from '../../src/core/shop/readShop.js';

/** Cells of one press, by item. */
export type PressCells = Record<string, CellValue>;

/** Units of the Presses table of an inch shop; items that are not here have none. */
const unitOf: Record<string, string> = {
  'Punch force': 'US ton',
  'Shear force': 'US ton',
  'Reference shear strength': 'ksi',
  'Heaviest bar': 'lb',
};

/** A press that has every station and every limit, inches and US tons. Invented. */
export const bayA: PressCells = {
  'Punch force': 60,
  'Shear force': 'none',
  'Share of rating to use': 0.8,
  'Reference shear strength': 50,
  Punch: 'yes',
  'Punch throat': 12,
  'Punch largest hole': '1-1/2',
  'Punch largest hole thickness': '1/2',
  'Punch stroke': 2,
  'Punch working gap': '1/4',
  'Punch clear under die': 8,
  'Punch die half width': '3/4',
  'Flat shear': 'yes',
  'Flat shear blade length': 14,
  'Flat shear rake': 4,
  'Flat shear dull-blade allowance': 1.2,
  'Flat shear widest bar': 12,
  'Flat shear widest bar thickness': '1/2',
  'Flat shear thickest bar': '3/4',
  'Flat shear thickest bar width': 8,
  'Flat shear shortest piece': 2,
  'Angle shear': 'yes',
  'Angle shear leg square': 5,
  'Angle shear thickness square': '1/2',
  'Angle shear leg at 45°': 3,
  'Angle shear thickness at 45°': '3/8',
  'Angle shear legs mitered': 'both',
  'Angle shear leg position': 'both',
  'Bar shear': 'yes',
  'Bar shear round': '1-1/2',
  'Bar shear square': '1-1/4',
  Notcher: 'yes',
  'Notcher width': 4,
  'Notcher depth': 4,
  'Notcher narrowest notch': 'none',
  'Notcher thickness': '3/8',
  Bend: 'yes',
  'Bend length': 18,
  'Bend V openings': '1, 1-1/2, 2, 3, 4',
  'Bend punch half width': '1/2',
  'Longest bar': 480,
  'Heaviest bar': 600,
};

const isNoSize = /force|share|strength|rake|allowance|heaviest|mitered|position|V openings/i;

/** Bay A for a shop that works in millimeters: every size with its inch mark. */
export const bayAInMillimeters: PressCells = Object.fromEntries(
  Object.entries(bayA).map(([item, value]): [string, CellValue] => {
    const isSize = !isNoSize.test(item) && /^\d/.test(String(value));
    return [item, isSize ? `${value} in` : value];
  }),
);

/** A smaller press without a bar shear. Invented. */
export const bayB: PressCells = {
  ...bayA,
  'Punch force': 30,
  'Punch largest hole': '1-1/4',
  'Punch largest hole thickness': '3/8',
  'Punch throat': 8,
  'Bar shear': 'no',
};

/** The Presses table, as it stands on the sheet. */
export function pressTable(presses: Record<string, PressCells>): CellValue[][] {
  const names = Object.keys(presses);
  const items = [...new Set(names.flatMap((name) => Object.keys(presses[name] ?? {})))];
  const rows = items.map((item) => [
    item,
    unitOf[item] ?? '',
    ...names.map((name) => presses[name]?.[item] ?? null),
  ]);
  return [['Item', 'Unit', ...names], ...rows];
}

export function settingTable(settings: Record<string, CellValue>): CellValue[][] {
  return [['Setting', 'Value'], ...Object.entries(settings)];
}

/** The tables of a shop with the presses Bay A and Bay B, unless others are given. */
export function shopTables(changes: Partial<ShopTables> = {}): ShopTables {
  return { presses: pressTable({ 'Bay A': bayA, 'Bay B': bayB }), ...changes };
}

/** A shop with one press, Bay A with some of its cells changed. */
export function shopWith(cells: PressCells = {}, others: Partial<ShopTables> = {}): Shop {
  return readShop({ presses: pressTable({ 'Bay A': { ...bayA, ...cells } }), ...others });
}
