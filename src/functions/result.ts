import {
  kilogramPerPound,
  type LengthUnit,
  mmPer,
  newtonPerKilonewton,
  newtonPerUsTon,
} from '../core/quantity/units.js';

/** What a function gives: a quantity that is converted to the shop's units, a plain number, text, or cells. */
export type ResultKind = 'force' | 'length' | 'mass' | 'ratio' | 'text' | 'cells';

const units: Record<'force' | 'mass', Record<LengthUnit, { name: string; per: number }>> = {
  force: { in: { name: 'US ton', per: newtonPerUsTon }, mm: { name: 'kN', per: newtonPerKilonewton } },
  mass: { in: { name: 'lb', per: kilogramPerPound }, mm: { name: 'kg', per: 1 } },
};

/** A number in the core's unit as the sheet shows it: US ton, in, lb in an inch shop; kN, mm, kg in a mm shop. */
export function toSheet(value: number, kind: ResultKind, unit: LengthUnit): number {
  if (kind === 'length') return value / mmPer[unit];
  return kind === 'force' || kind === 'mass' ? value / units[kind][unit].per : value;
}
