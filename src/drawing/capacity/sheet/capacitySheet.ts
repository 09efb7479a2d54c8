import { isOfStation } from '../../../core/press/item/isOfStation.js';
import type { Grade } from '../../../core/material/grade.js';
import { isInvented } from '../../../core/press/isInvented.js';
import { type PressItemKey, pressItems } from '../../../core/press/item/pressItem.js';
import { itemName } from '../../../core/press/limit.js';
import { type Press, pressValue } from '../../../core/press/press.js';
import { barLength } from '../../../core/say/barLength.js';
import { formatQuantity } from '../../../core/quantity/formatQuantity.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { greatestGoodShare } from '../punchCapacity.js';
import { type PunchTable, punchTable } from './punchTable.js';
import { type GradeTable, has, shearTables } from './shearTables.js';
import { type VeeRow, veeTable } from './veeTable.js';

/** All that a page says of what a press can do. */
export interface CapacitySheet {
  press: string;
  isInvented: boolean;
  /** The share of the rating that the shop uses, from 0 to 1. */
  share: number;
  /** The limits of the press; `value` is left out where it is not known. */
  facts: { name: string; value?: string }[];
  grades: string[];
  punch?: PunchTable;
  shears: GradeTable[];
  vees: VeeRow[];
  /** Stations that the press has not got, and those of which nobody said so. */
  missing: string[];
  unknownStations: string[];
}

const told: readonly { key: PressItemKey; kind: 'force' | 'length' | 'mass' }[] = [
  { key: 'punchForce', kind: 'force' },
  { key: 'punchThroat', kind: 'length' },
  { key: 'punchStroke', kind: 'length' },
  { key: 'punchClearUnderDie', kind: 'length' },
  { key: 'flatShearBladeLength', kind: 'length' },
  { key: 'bendLength', kind: 'length' },
  { key: 'longestBar', kind: 'length' },
  { key: 'heaviestBar', kind: 'mass' },
];
const stations = pressItems.filter(({ kind }) => kind === 'station');

/** The capacity sheet of a press, from the values of the shop and the checks that rows go through. */
export function capacitySheet(press: Press, shop: Shop, grades: readonly Grade[]): CapacitySheet {
  const stateOf = (key: PressItemKey) => pressValue(press, key).state;
  return {
    press: press.name,
    isInvented: isInvented(press),
    share: greatestGoodShare(press),
    facts: told
      .filter(({ key }) =>
        stations.every((station) => !ofStation(key, station.name) || has(press, station.key)),
      )
      .map((fact) => factOf(press, shop, fact)),
    grades: grades.map(({ name }) => name),
    ...(has(press, 'punch') ? { punch: punchTable(press, shop, grades) } : {}),
    shears: shearTables(press, shop, grades),
    vees: has(press, 'bend') ? veeTable(press, shop, grades) : [],
    missing: stations.filter(({ key }) => !has(press, key)).map(({ name }) => name),
    unknownStations: stations.filter(({ key }) => stateOf(key) === 'unknown').map(({ name }) => name),
  };
}

const ofStation = (key: PressItemKey, station: string) => isOfStation(itemName(key), station);

function factOf(
  press: Press,
  shop: Shop,
  { key, kind }: (typeof told)[number],
): CapacitySheet['facts'][number] {
  const value = pressValue(press, key);
  const name = itemName(key);
  if (value.state === 'none') return { name, value: 'no limit' };
  if (value.state !== 'value') return { name };
  if (key === 'longestBar') return { name, value: barLength(value.value, shop.unit) };
  return { name, value: formatQuantity({ kind, value: value.value }, shop.unit) };
}
