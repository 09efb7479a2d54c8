import type { NamedValue } from './working.js';

/** A length in mm, as a step shows it. */
export function lengthValue(symbol: string, meaning: string, value: number): NamedValue {
  return { symbol, meaning, kind: 'length', value };
}

/** A strength or stress in MPa. */
export function stressValue(symbol: string, meaning: string, value: number): NamedValue {
  return { symbol, meaning, kind: 'stress', value };
}

/** A force in N. */
export function forceValue(symbol: string, meaning: string, value: number): NamedValue {
  return { symbol, meaning, kind: 'force', value };
}

/** A factor or share. */
export function ratioValue(symbol: string, meaning: string, value: number): NamedValue {
  return { symbol, meaning, kind: 'ratio', value };
}

/** Words. */
export function textValue(symbol: string, meaning: string, value: string): NamedValue {
  return { symbol, meaning, kind: 'text', value };
}
