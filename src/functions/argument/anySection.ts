import { readAnySection } from '../../core/section/readAnySection.js';
import type { AnySection } from '../../core/section/section.js';
import type { ScalarArgument } from './argument.js';

/** A section of any kind, tubes and tees too. */
export const anySectionArgument = (
  meaning = 'Section: PL1/2X6, L3X3X1/4, C8X11.5, RB 1, SQ 3/4, HSS4X4X1/4, RHS100x50x5, T3X3X3/8',
): ScalarArgument<AnySection> => ({
  kind: 'any section',
  meaning,
  dimensionality: 'scalar',
  optional: false,
  read: (value, { argument, unit }) => readAnySection(value, argument, unit).section,
});
