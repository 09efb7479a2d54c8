import { type CellValue, quoted } from './cellValue.js';
import { refuse } from '../inputError.js';
import type { LengthUnit } from './units.js';

/**
 * The value of a run of digits with points and commas, where it can only be read one way; undefined where
 * it is not a number. `1,500` may be 1.5 or 1500 and is reported as `ambiguous`.
 */
export function digitsValue(run: string): number | 'ambiguous' | undefined {
  if (/^\d+$/.test(run) || /^\d*\.\d+$/.test(run)) return Number(run);
  if (/^\d+,\d+$/.test(run)) {
    const [whole = '', decimals = ''] = run.split(',');
    const grouped = decimals.length === 3 && /^[1-9]\d{0,2}$/.test(whole);
    return grouped ? 'ambiguous' : Number(`${whole}.${decimals}`);
  }
  if (/^\d{1,3}(?:,\d{3})+\.\d+$/.test(run) || /^\d{1,3}(?:,\d{3}){2,}$/.test(run)) {
    return Number(run.replaceAll(',', ''));
  }
  if (/^\d{1,3}(?:\.\d{3})+,\d+$/.test(run) || /^\d{1,3}(?:\.\d{3}){2,}$/.test(run)) {
    return Number(run.replaceAll('.', '').replace(',', '.'));
  }
  return undefined;
}

/** Both readings of a number such as `1,500`, for a refusal. */
export function refuseBothReadings(argument: string, received: CellValue, run: string): never {
  const [whole = '', decimals = ''] = run.split(',');
  const small = String(Number(`${whole}.${decimals}`));
  const large = `${whole}${decimals}`;
  return refuse(
    argument,
    String(received),
    `${quoted(received)} may be ${small} or ${large}.`,
    `Write ${small} or ${large}.`,
  );
}

/** `6.000`: where people work in metric units, the point may part thousands. */
export const pointBeforeThree = /^[1-9]\d{0,2}\.\d{3}$/;

/** Both readings of such a number, for a refusal. */
export function refuseThousandsPoint(argument: string, received: CellValue, run: string, unit = ''): never {
  const readings = `${Number(run)}${unit} or ${run.replace('.', '')}${unit}`;
  return refuse(argument, String(received), `${quoted(received)} may be ${readings}.`, `Write ${readings}.`);
}

/** Refuses an amount of money such as `1.250` where people work in metric units: it may be 1.25 or 1250. */
export function refuseThousandsAmount(value: CellValue, argument: string, unit: LengthUnit): void {
  if (unit !== 'mm' || typeof value !== 'string') return;
  const run = value.trim();
  if (pointBeforeThree.test(run)) refuseThousandsPoint(argument, value, run);
}

/** A plain number without a unit, from a number cell or from text. Throws for anything else. */
export function readNumber(value: CellValue, argument: string, allowed = 'Write a number.'): number {
  if (typeof value === 'number' && Number.isFinite(value)) return value;
  if (typeof value === 'string') {
    const run = value.trim();
    const negative = /^[-−]/.test(run);
    const read = digitsValue(negative ? run.slice(1) : run);
    if (read === 'ambiguous') refuseBothReadings(argument, value, negative ? run.slice(1) : run);
    if (read !== undefined && Number.isFinite(read)) return negative ? -read : read;
  }
  return refuse(argument, String(value), `${quoted(value)} is not a number.`, allowed);
}
