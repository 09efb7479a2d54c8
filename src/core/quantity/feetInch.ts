import { refuse } from '../inputError.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { mmPerInch } from './units.js';

/** The fractions of an inch a length can be rounded to. */
export const inchDenominators = [1, 2, 4, 8, 16, 32, 64] as const;

const inchesPerFoot = 12;
/** Conversions leave rounding in the last digits, which must not turn an exact half down. */
const roundingShare = 1e-12;

/**
 * A length in feet and inches as a drawing writes it, rounded to a fraction of an inch.
 *
 * Formula: n = round(L / 1 in · N), a half up; feet, inches and n / N in lowest terms
 * @param input length L in mm; denominator N (16): 1, 2, 4, 8, 16, 32 or 64
 * @param working collects the step when given
 * @returns text such as `2'-6 1/2"`, readable as a length again
 * Valid for lengths above zero that do not round to nothing. Throws `invalid` otherwise.
 * @example feetInchText({ lengthMm: 774.7 }) // 2'-6 1/2"
 * Source: common practice, no source.
 */
export function feetInchText(input: { lengthMm: number; denominator?: number }, working?: Working): string {
  const { lengthMm, denominator = 16 } = input;
  requirePositive('Length', lengthMm);
  if (!inchDenominators.some((each) => each === denominator)) {
    const allowed = `Write ${inchDenominators.join(', ')}.`;
    refuse('Denominator', String(denominator), `${denominator} is not a fraction of a rule.`, allowed);
  }
  const parts = Math.round((lengthMm / mmPerInch) * denominator * (1 + roundingShare));
  if (parts === 0) {
    const problem = `the length rounds to nothing in 1/${denominator} in.`;
    refuse('Denominator', String(denominator), problem, 'Use a finer fraction, up to 64.');
  }
  const text = feetAndInches(parts, denominator);
  working?.step({
    title: 'Feet and inches',
    formula: 'n = round(L · N), N parts to the inch',
    values: [
      lengthValue('L', 'length', lengthMm),
      { symbol: 'N', meaning: 'parts to the inch', kind: 'count', value: denominator },
    ],
    result: textValue('L', 'length in feet and inches', text),
    source: 'common practice',
  });
  return text;
}

function feetAndInches(parts: number, denominator: number): string {
  const perFoot = inchesPerFoot * denominator;
  const feet = Math.floor(parts / perFoot);
  const inches = Math.floor((parts % perFoot) / denominator);
  let over = parts % denominator;
  let under = denominator;
  while (over !== 0 && over % 2 === 0) {
    over /= 2;
    under /= 2;
  }
  return `${feet}'-${inches}${over === 0 ? '' : ` ${over}/${under}`}"`;
}
