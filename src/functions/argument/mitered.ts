import { greatestMiterDegree } from '../../core/cut/requireMiter.js';
import { planeWidthMm } from '../../core/section/planeWidth.js';
import { isBlank } from '../../core/quantity/cellValue.js';
import { readAngle } from '../../core/quantity/readAngle.js';
import { readAnySection } from '../../core/section/readAnySection.js';
import type { AnySection } from '../../core/section/section.js';
import type { ScalarArgument } from './argument.js';
import { optionalLengthArgument } from './length.js';

/** A section that is mitered, and its width in the plane of the miters. */
export const miteredSectionArgument: ScalarArgument<{ section: AnySection; planeMm: number }> = {
  kind: 'mitered section',
  meaning: 'Section: FB 1/4x2, L3X2X1/4 (the leg written first lies in the plane of the miters), HSS2X2X1/8',
  dimensionality: 'scalar',
  optional: false,
  read: (value, { argument, unit }) => {
    const read = readAnySection(value, argument, unit);
    return { section: read.section, planeMm: planeWidthMm(read, argument) };
  },
};

/** A miter in rad from degrees; a blank cell is a square end. */
export const miterArgument = (meaning: string): ScalarArgument<number> => ({
  kind: 'angle',
  meaning,
  dimensionality: 'scalar',
  optional: false,
  read: (value, { argument }) => (isBlank(value) ? 0 : readAngle(value, argument, 0, greatestMiterDegree)),
});

/** The same for the other end, below 0 where its long point is on the other edge. */
export const miterRightArgument: ScalarArgument<number> = {
  kind: 'angle to either side',
  meaning: 'Right miter in degrees from square; with a minus where its long point is on the other edge',
  dimensionality: 'scalar',
  optional: true,
  omitted: '0, a square end',
  read: (value, { argument }) =>
    isBlank(value) ? 0 : readAngle(value, argument, -greatestMiterDegree, greatestMiterDegree),
};

export const kerfArgument = optionalLengthArgument(
  'thickness',
  'Kerf of the saw or slug of the shear, across the cut; none for a single blade',
  'none, a single blade',
);
