import { kilogramPerPound, type LengthUnit } from './units.js';

/** A mass in whole pounds or kilograms, for notes: `512 lb`. */
export function formatMass(massKg: number, unit: LengthUnit): string {
  return unit === 'in' ? `${(massKg / kilogramPerPound).toFixed(0)} lb` : `${massKg.toFixed(0)} kg`;
}
