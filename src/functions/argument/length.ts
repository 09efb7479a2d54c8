import { isBlank } from '../../core/quantity/cellValue.js';
import type { LengthKindName } from '../../core/quantity/lengthKind.js';
import { readLength } from '../../core/quantity/readLength.js';
import type { ScalarArgument } from './argument.js';

/** A length in mm: a number in the shop's unit, or text in trade notation. */
export function lengthArgument(kind: LengthKindName, meaning: string): ScalarArgument<number> {
  return {
    kind: 'length',
    meaning,
    dimensionality: 'scalar',
    optional: false,
    read: (value, { argument, unit }) => readLength(value, argument, unit, kind),
  };
}

/** The same, where it may be left out. */
export function optionalLengthArgument(
  kind: LengthKindName,
  meaning: string,
  omitted: string,
): ScalarArgument<number | undefined> {
  const required = lengthArgument(kind, meaning);
  return {
    ...required,
    optional: true,
    omitted,
    read: (value, context) => (isBlank(value) ? undefined : required.read(value, context)),
  };
}
