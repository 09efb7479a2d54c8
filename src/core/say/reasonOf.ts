import type { LengthUnit } from '../quantity/units.js';
import type { CheckedRow } from '../row/rowResult.js';
import { governs, say } from './say.js';

/** Why a row has its word: the sentence of its worst finding, or what decided where nothing is to be said. */
export function reasonOf({ findings, deciding }: CheckedRow, unit: LengthUnit): string {
  const [worst] = findings;
  const text = worst ? say(worst, unit) : '';
  if (text !== '') return text;
  return deciding ? governs(deciding, unit) : '';
}
