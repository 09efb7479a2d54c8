import { bolts } from './bolts.js';
import { grades } from './grades.js';
import { holes } from './holes.js';
import { lengths } from './lengths.js';
import { quantities } from './quantities.js';
import { sections } from './sections.js';
import type { Notation } from './notation.js';

/**
 * Every way of writing that is read, or refused on purpose, one a line: what the page of notations and the tests of the
 * readers are made from.
 */
export const allNotations: readonly Notation[] = [
  ...sections,
  ...grades,
  ...holes,
  ...bolts,
  ...lengths,
  ...quantities,
];
