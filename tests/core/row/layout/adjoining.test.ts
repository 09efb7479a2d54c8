import { describe, expect, it } from 'vitest';
import type { Cause } from '../../../../src/core/part/outline.js';
import { adjoiningMm } from '../../../../src/core/row/layout/adjoining.js';
import { facesOf } from '../../../../src/core/row/job/faces.js';
import { readAnySection } from '../../../../src/core/section/readAnySection.js';

const origin = { x: 0, y: 0 };

function beside(section: string, face: string, is: Cause['is']): number {
  const read = readAnySection(section, 'Section', 'mm').section;
  const size = facesOf(read).find(({ id }) => id === face);
  if (!size) throw new Error(`${section} has no ${face}`);
  return adjoiningMm(read, size, { from: origin, to: origin, cause: { is }, kind: 'none' });
}

describe('adjoiningMm', () => {
  it('is the other leg at the heel of an angle, and nothing at the toe and the ends', () => {
    expect(beside('L80x60x8', 'leg A', 'heel')).toBe(8);
    expect(beside('L80x60x8', 'leg B', 'heel')).toBe(8);
    expect(beside('L80x60x8', 'leg A', 'toe')).toBe(0);
    expect(beside('L80x60x8', 'leg A', 'left end')).toBe(0);
  });

  it('is a flange at both edges of a web, and the web at the back of a flange', () => {
    // C8X11.5: flange 0.390 in, web 0.220 in (AISC Manual Table 1-5, from memory).
    expect(beside('C8X11.5', 'web', 'bottom edge')).toBeCloseTo(0.39 * 25.4, 6);
    expect(beside('C8X11.5', 'web', 'top edge')).toBeCloseTo(0.39 * 25.4, 6);
    expect(beside('C8X11.5', 'flange 1', 'heel')).toBeCloseTo(0.22 * 25.4, 6);
    expect(beside('C8X11.5', 'flange 1', 'toe')).toBe(0);
  });

  it('is nothing at the edges of a plate', () => {
    expect(beside('PL10x100', 'plate', 'bottom edge')).toBe(0);
  });
});
