import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import { sectionMassKg } from '../../../src/core/section/mass.js';
import { readSection } from '../../../src/core/section/readSection.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const section = (text: string, unit: LengthUnit = 'mm') => readSection(text, 'Section', unit).section;

describe('sectionMassKg: arguments', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a length or a density of %d', (bad) => {
    for (const text of ['FB10x50', 'UPN100']) {
      const of = section(text);
      expect(
        refusal(() => sectionMassKg({ section: of, lengthMm: bad, densityKgPerM3: 7850 })).argument,
      ).toBe('Length');
      expect(
        refusal(() => sectionMassKg({ section: of, lengthMm: 1000, densityKgPerM3: bad })).argument,
      ).toBe('Density');
    }
  });
});

describe('sectionMassKg: limits', () => {
  it('takes a channel of steel by its own mass and scales it for another density', () => {
    const channel = section('UPN100');
    expect(sectionMassKg({ section: channel, lengthMm: 1000, densityKgPerM3: 7850 })).toBe(10.6);
    expect(sectionMassKg({ section: channel, lengthMm: 1000, densityKgPerM3: 3925 })).toBe(5.3);
  });
});

describe('sectionMassKg: values', () => {
  it.each([
    ['FB10x50', 3.925],
    ['SQ20', 3.14],
  ])('of one meter of %s is %d kg', (text, massKg) => {
    expect(sectionMassKg({ section: section(text), lengthMm: 1000, densityKgPerM3: 7850 })).toBeCloseTo(
      massKg,
      9,
    );
  });

  it.each(['FB10x50', 'L80x80x8', 'UPN100', 'RB25'])('of %s doubles with the length', (text) => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 12_000, noNaN: true }), (lengthMm) => {
        const at = (l: number) =>
          sectionMassKg({ section: section(text), lengthMm: l, densityKgPerM3: 7850 });
        expect(at(2 * lengthMm)).toBeCloseTo(2 * at(lengthMm), 9);
      }),
    );
  });

  it.each([
    ['FB10x50', 7850],
    ['UPN100', 7850],
    ['C8X11.5', 2700],
  ])('shows its working for %s at %d kg/m³', (text, densityKgPerM3) => {
    const steps = expectWorking((working) =>
      sectionMassKg({ section: section(text), lengthMm: 1000, densityKgPerM3 }, working),
    );
    expect(steps.at(-1)?.result.kind).toBe('mass');
  });
});
