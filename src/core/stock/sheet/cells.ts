import { formatLength, formatNumber } from '../../quantity/formatLength.js';
import { kilogramPerPound, type LengthUnit, mmPer, radianPerDegree } from '../../quantity/units.js';
import type { SheetCell, SheetRow } from './sheetCell.js';

/* The cells of a plan, in the unit of the shop. */

const rounded = (value: number, decimals: number) => Number(value.toFixed(decimals));

export const text = (value: string): SheetCell => (value === '' ? null : { kind: 'text', value });
export const count = (value: number): SheetCell => ({ kind: 'count', value });
export const share = (value: number): SheetCell => ({ kind: 'share', value: rounded(value, 6) });

/** A length as a number, for formulas. */
export function length(mm: number, unit: LengthUnit): SheetCell {
  return { kind: 'length', value: rounded(mm / mmPer[unit], unit === 'in' ? 5 : 3) };
}

/** A length for people: as the trade writes it in an inch shop. */
export function size(mm: number, unit: LengthUnit): SheetCell {
  return unit === 'in' ? text(formatLength(mm, unit)) : { kind: 'length', value: rounded(mm, 2) };
}

export function mass(kg: number, unit: LengthUnit): SheetCell {
  return { kind: 'mass', value: rounded(unit === 'in' ? kg / kilogramPerPound : kg, 3) };
}

export function money(value: number | undefined): SheetCell {
  return value === undefined ? null : { kind: 'money', value: rounded(value, 4) };
}

/** Degrees from square; nothing for a square end. */
export function miter(rad: number): SheetCell {
  return rad === 0 ? null : { kind: 'angle', value: Number(formatNumber(rad / radianPerDegree, 3)) };
}

export const headings = (...names: readonly string[]): SheetRow =>
  names.map((value) => ({ kind: 'heading', value }));
