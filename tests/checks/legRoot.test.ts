// AISC Manual, Table 1-7 (from memory): k, from the heel to the end of the fillet, in inches.
import { expect, it } from 'vitest';
import { legRootMm } from '../../src/core/section/legRoot.js';

it.each([
  [0.5, 3 / 8, 7 / 8],
  [0.25, 3 / 8, 5 / 8],
])('an angle %s in thick with a fillet of %s in is flat from %s in on', (thicknessIn, radiusIn, k) => {
  const legMm = 4 * 25.4;
  const section = {
    kind: 'angle' as const,
    designation: 'L4X4',
    legAMm: legMm,
    legBMm: legMm,
    thicknessMm: thicknessIn * 25.4,
    rootRadiusMm: radiusIn * 25.4,
    toeRadiusMm: 0,
    rootRadiusKnown: true,
  };
  expect(legRootMm(section) / 25.4).toBeCloseTo(k, 9);
});
