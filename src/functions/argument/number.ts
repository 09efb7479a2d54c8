import { refuse } from '../../core/inputError.js';
import { isBlank, quoted } from '../../core/quantity/cellValue.js';
import { readAngle } from '../../core/quantity/readAngle.js';
import { readNumber } from '../../core/quantity/readNumber.js';
import type { ScalarArgument } from './argument.js';

/** A whole number of things from 1 to `greatest`; undefined when left out. */
export function optionalCountArgument(
  meaning: string,
  greatest: number,
  omitted: string,
): ScalarArgument<number | undefined> {
  const allowed = `Write a whole number from 1 to ${greatest}.`;
  return {
    kind: 'count',
    meaning,
    dimensionality: 'scalar',
    optional: true,
    omitted,
    read: (value, { argument }) => {
      if (isBlank(value)) return undefined;
      const count = readNumber(value, argument, allowed);
      if (Number.isInteger(count) && count >= 1 && count <= greatest) return count;
      const problem = Number.isInteger(count) ? 'is out of range.' : 'is not a whole number.';
      return refuse(argument, String(value), `${quoted(value)} ${problem}`, allowed);
    },
  };
}

/** An angle in rad from degrees; zero when left out. */
export function optionalAngleArgument(meaning: string, greatestDegree: number): ScalarArgument<number> {
  return {
    kind: 'angle',
    meaning,
    dimensionality: 'scalar',
    optional: true,
    omitted: '0',
    read: (value, { argument }) => (isBlank(value) ? 0 : readAngle(value, argument, 0, greatestDegree)),
  };
}
