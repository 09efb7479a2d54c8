import { refuse } from '../../core/inputError.js';
import { isBlank, quoted } from '../../core/quantity/cellValue.js';
import { readNumber } from '../../core/quantity/readNumber.js';
import type { ScalarArgument } from './argument.js';

const most = 1000;
const allowed = `Write a whole number from 1 to ${most}.`;

/** How many holes a row, a column or a circle has. */
export function holeCountArgument(meaning: string): ScalarArgument<number> {
  return {
    kind: 'hole count',
    meaning,
    dimensionality: 'scalar',
    optional: false,
    read: (value, { argument }) => {
      if (isBlank(value)) return refuse(argument, '', 'the cell is blank.', allowed);
      const count = readNumber(value, argument, allowed);
      if (Number.isInteger(count) && count >= 1 && count <= most) return count;
      const problem = Number.isInteger(count) ? 'is out of range.' : 'is not a whole number.';
      return refuse(argument, String(value), `${quoted(value)} ${problem}`, allowed);
    },
  };
}
