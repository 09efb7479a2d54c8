import {
  kilogramPerPound,
  type LengthUnit,
  megapascalPerKsi,
  mmPer,
  mmPerFoot,
  mmPerInch,
  newtonPerKilonewton,
  newtonPerUsTon,
  radianPerDegree,
} from './units.js';
import type { QuantityKind } from '../working/working.js';

interface ShopUnit {
  name: string;
  /** How many of the core's units make one of these. */
  per: number;
  /** Decimals the trade writes. */
  decimals: number;
}

const plain = (name: string, decimals: number, per = 1): Record<LengthUnit, ShopUnit> => {
  const unit = { name, per, decimals };
  return { in: unit, mm: unit };
};
const secondsPerMinute = 60;
const degree: ShopUnit = { name: '°', per: radianPerDegree, decimals: 2 };

/** The unit each kind of quantity has on the sheet: of an inch shop and of a mm shop. */
export const shopUnits: Record<Exclude<QuantityKind, 'text'>, Record<LengthUnit, ShopUnit>> = {
  length: { in: { name: 'in', per: mmPer.in, decimals: 4 }, mm: { name: 'mm', per: mmPer.mm, decimals: 2 } },
  area: { in: { name: 'in²', per: mmPerInch ** 2, decimals: 3 }, mm: { name: 'mm²', per: 1, decimals: 1 } },
  surface: {
    in: { name: 'ft²', per: mmPerFoot ** 2, decimals: 2 },
    mm: { name: 'm²', per: 1e6, decimals: 3 },
  },
  force: {
    in: { name: 'US ton', per: newtonPerUsTon, decimals: 2 },
    mm: { name: 'kN', per: newtonPerKilonewton, decimals: 1 },
  },
  stress: {
    in: { name: 'ksi', per: megapascalPerKsi, decimals: 2 },
    mm: { name: 'MPa', per: 1, decimals: 1 },
  },
  mass: { in: { name: 'lb', per: kilogramPerPound, decimals: 2 }, mm: { name: 'kg', per: 1, decimals: 2 } },
  massPerLength: {
    in: { name: 'lb/ft', per: kilogramPerPound / (mmPerFoot / 1000), decimals: 2 },
    mm: { name: 'kg/m', per: 1, decimals: 2 },
  },
  density: {
    in: { name: 'lb/ft³', per: kilogramPerPound / (mmPerFoot / 1000) ** 3, decimals: 1 },
    mm: { name: 'kg/m³', per: 1, decimals: 0 },
  },
  angle: { in: degree, mm: degree },
  speed: { in: { name: 'in/s', per: mmPer.in, decimals: 2 }, mm: { name: 'mm/s', per: 1, decimals: 1 } },
  seconds: plain('s', 1),
  minutes: plain('min', 2, secondsPerMinute),
  money: plain('', 2),
  moneyPerMass: {
    in: { name: 'per lb', per: 1 / kilogramPerPound, decimals: 4 },
    mm: { name: 'per kg', per: 1, decimals: 4 },
  },
  ratio: plain('', 4),
  count: plain('', 0),
};

/** The digits a sheet shows; more would be noise of the conversion, and 12 in read and given back would be 11.999…8. */
const shownDigits = 15;

/** A quantity in the core's unit as a number in the shop's. */
export function inShopUnit(value: number, kind: Exclude<QuantityKind, 'text'>, unit: LengthUnit): number {
  return Number((value / shopUnits[kind][unit].per).toPrecision(shownDigits));
}
