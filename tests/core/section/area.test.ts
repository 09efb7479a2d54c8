import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import { sectionAreaMm2 } from '../../../src/core/section/area.js';
import { readSection } from '../../../src/core/section/readSection.js';
import type { Section } from '../../../src/core/section/section.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const section = (text: string, unit: LengthUnit = 'mm') => readSection(text, 'Section', unit).section;

describe('sectionAreaMm2: arguments', () => {
  it.each([0, -5, Number.NaN, Infinity])('refuses a dimension of %d', (size) => {
    const flat: Section = { kind: 'flat', designation: 'FB', form: 'bar', thicknessMm: size, widthMm: 50 };
    expect(refusal(() => sectionAreaMm2(flat)).argument).toBe('thickness');
    const round: Section = { kind: 'round', designation: 'RB', diameterMm: size };
    expect(refusal(() => sectionAreaMm2(round)).argument).toBe('diameter');
  });
});

describe('sectionAreaMm2: limits', () => {
  it('says that an angle of unknown radius is taken as sharp, and only then', () => {
    const cautions = (text: string) =>
      expectWorking((working) => sectionAreaMm2(section(text), working)).at(-1)?.cautions ?? [];
    expect(cautions('L81x80x8')).toHaveLength(1);
    expect(cautions('L80x80x8')).toHaveLength(0);
    expect(cautions('L3x3x1/4')).toHaveLength(0);
  });

  it('comes near the area of a square where an angle is nearly solid', () => {
    const solid: Section = {
      kind: 'angle',
      designation: 'L',
      legAMm: 50,
      legBMm: 50,
      thicknessMm: 49.999,
      rootRadiusMm: 0,
      rootRadiusKnown: true,
    };
    expect(sectionAreaMm2(solid)).toBeCloseTo(2500, 2);
  });
});

describe('sectionAreaMm2: values', () => {
  it.each([
    ['FB10x50', 500],
    ['SQ20', 400],
    ['RD20', Math.PI * 100],
    ['UPN100', 1350],
  ])('of %s', (text, areaMm2) => {
    expect(sectionAreaMm2(section(text))).toBeCloseTo(areaMm2, 9);
  });

  it('is the same for a section written in inches and in mm', () => {
    expect(sectionAreaMm2(section('FB1/2x4'))).toBeCloseTo(sectionAreaMm2(section('FB12.7x101.6')), 9);
  });

  it('grows with the thickness', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 40, noNaN: true }), (thicknessMm) => {
        const at = (t: number) =>
          sectionAreaMm2({
            kind: 'angle',
            designation: 'L',
            legAMm: 100,
            legBMm: 75,
            thicknessMm: t,
            rootRadiusMm: 10,
            rootRadiusKnown: true,
          });
        expect(at(thicknessMm + 0.5)).toBeGreaterThan(at(thicknessMm));
      }),
    );
  });

  it.each(['FB10x50', 'SQ20', 'RD20', 'L80x80x8', 'L81x80x8', 'L3x3x1/4', 'UPN100', 'C8X11.5'])(
    'shows its working for %s',
    (text) => {
      expect(expectWorking((working) => sectionAreaMm2(section(text), working))).toHaveLength(1);
    },
  );
});
