import { formatLength, formatNumber } from '../../core/quantity/formatLength.js';
import {
  kilogramPerPound,
  type LengthUnit,
  megapascalPerKsi,
  mmPerFoot,
  mmPerInch,
  newtonPerKilonewton,
  newtonPerUsTon,
  radianPerDegree,
} from '../../core/quantity/units.js';
import type { NamedValue, QuantityKind } from '../../core/working/working.js';

interface ShownUnit {
  name: string;
  /** How many of the core's units make one of these. */
  per: number;
  decimals: number;
}

type Shown = Record<LengthUnit, ShownUnit>;

const both = (name: string, per: number, decimals: number): Shown => {
  const unit = { name, per, decimals };
  return { in: unit, mm: unit };
};

/** The units a pane writes quantities in: those of the sheet. */
export const shownUnits: Record<Exclude<QuantityKind, 'text' | 'length'>, Shown> = {
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
  angle: both('°', radianPerDegree, 2),
  ratio: both('', 1, 4),
  count: both('', 1, 0),
};

/** A quantity with its unit, rounded as the trade writes it: `3/8 in`, `30.03 US ton`. */
export function shownQuantity({ kind, value }: Pick<NamedValue, 'kind' | 'value'>, unit: LengthUnit): string {
  if (kind === 'text' || typeof value === 'string') return String(value);
  if (kind === 'length') return `${formatLength(value, unit)} ${unit}`;
  const { name, per, decimals } = shownUnits[kind][unit];
  return `${formatNumber(value / per, decimals)}${name === '' || name === '°' ? name : ` ${name}`}`;
}

/** A share as a percentage: `113 %`. */
export function shownShare(share: number): string {
  return `${(share * 100).toFixed(share < 0.0995 ? 1 : 0)} %`;
}
