import { describe, expect, it } from 'vitest';
import { planeWidthMm } from '../../../src/core/section/planeWidth.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import { refusalText } from '../../support/refusal.js';

const widthOf = (section: string) => planeWidthMm(readAnySection(section, 'Section', 'mm'), 'Section');

describe('planeWidthMm', () => {
  it.each([
    ['FB 10x50', 50],
    ['FB 50x10', 50],
    ['L80x80x8', 80],
    ['L100x75x8', 100],
    ['L75x100x8', 75],
    ['RD 25', 25],
    ['SQ 20', 20],
    ['RHS50x50x3', 50],
    ['CHS60.3x3.2', 60.3],
  ])('of %s is %d mm', (section, widthMm) => {
    expect(widthOf(section)).toBeCloseTo(widthMm, 9);
  });

  it.each(['UPN100', 'RHS100x50x5', 'HEA200', 'T60x50x6'])(
    'refuses %s: it may lie in two ways',
    (section) => {
      expect(refusalText(() => widthOf(section))).toMatch(
        /^Section: .* has two widths, by how it lies in the plane of the miter\. Write a flat as wide as it is in that plane, such as FB 1\/4x4\.$/,
      );
    },
  );

  it('does not change the section: both ways of writing an angle are one section', () => {
    const [a, b] = ['L100x75x8', 'L75x100x8'].map((text) => readAnySection(text, 'Section', 'mm'));
    expect(a?.section).toEqual(b?.section);
    expect(a?.shortLegFirst).toBeUndefined();
    expect(b?.shortLegFirst).toBe(true);
  });
});
