import { kilogramPerPound, type LengthUnit } from './units.js';

/** A mass in whole pounds or kilograms, for notes: `1,512 lb`. */
export function formatMass(massKg: number, unit: LengthUnit): string {
  const [mass, name] = unit === 'in' ? [massKg / kilogramPerPound, 'lb'] : [massKg, 'kg'];
  return `${Math.round(mass).toLocaleString('en')} ${name}`;
}
