import { describe, expect, it } from 'vitest';
import { sectionAreaMm2 } from '../../../src/core/section/area.js';
import { sectionMassKg } from '../../../src/core/section/mass.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import type { AnySection } from '../../../src/core/section/section.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const section = (text: string) => readAnySection(text, 'Section', 'mm').section;
const tube: AnySection = { kind: 'tube', designation: 'T', depthMm: 100, widthMm: 50, thicknessMm: 5 };

describe('area of tubes and tees: arguments', () => {
  it.each([0, -5, Number.NaN, Infinity])('refuses a dimension of %d', (size) => {
    expect(refusal(() => sectionAreaMm2({ ...tube, depthMm: size })).argument).toBe('depth');
    expect(refusal(() => sectionAreaMm2({ ...tube, thicknessMm: size })).argument).toBe(
      'thickness of the wall',
    );
    const round: AnySection = { kind: 'round tube', designation: 'R', diameterMm: size, thicknessMm: 3 };
    expect(refusal(() => sectionAreaMm2(round)).argument).toBe('outside diameter');
  });
});

describe('area of tubes and tees: limits', () => {
  it('says that metric walls over 6 mm have larger corners', () => {
    const cautions = (thicknessMm: number) =>
      expectWorking((working) => sectionAreaMm2({ ...tube, thicknessMm }, working)).at(-1)?.cautions ?? [];
    expect(cautions(6)).toHaveLength(1);
    expect(cautions(6.1)).toHaveLength(2);
  });
});

describe('area of tubes and tees: values', () => {
  it.each([
    ['RHS100x50x5', 1400 - (4 - Math.PI) * 75],
    ['CHS60x5', Math.PI * 5 * 55],
    ['T60x50x6', 6 * 104],
  ])('of %s, with its working', (text, areaMm2) => {
    const steps = expectWorking((working) => sectionAreaMm2(section(text), working));
    expect(steps[0]?.result.value).toBeCloseTo(areaMm2, 9);
  });

  it('the mass follows from the area', () => {
    const massKg = sectionMassKg({ section: tube, lengthMm: 1000, densityKgPerM3: 7850 });
    expect(massKg).toBeCloseTo(sectionAreaMm2(tube) * 7.85e-3, 9);
  });
});
