import { describe, expect, it } from 'vitest';
import { paintAreaMm2 } from '../../../src/core/section/paintArea.js';
import { sectionPerimeterMm } from '../../../src/core/section/perimeter.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import type { AnySection } from '../../../src/core/section/section.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const section = (text: string) => readAnySection(text, 'Section', 'mm').section;
const everyKind = [
  ...['FB10x50', 'RD20', 'SQ20', 'L80x80x8', 'L81x80x8', 'UPN100', 'RHS100x50x5', 'CHS60.3x3.2', 'T50x50x6'],
];

describe('sectionPerimeterMm: arguments', () => {
  it.each([0, -5, Number.NaN, Infinity])('refuses a dimension of %d', (size) => {
    const round: AnySection = { kind: 'round', designation: 'RB', diameterMm: size };
    expect(refusal(() => sectionPerimeterMm(round)).argument).toBe('outside diameter');
    const tee: AnySection = {
      kind: 'tee',
      designation: 'T',
      flangeWidthMm: 50,
      depthMm: size,
      thicknessMm: 6,
    };
    expect(refusal(() => sectionPerimeterMm(tee)).argument).toBe('depth of the stem');
  });
});

describe('sectionPerimeterMm: limits', () => {
  it('an angle without a radius has the perimeter of its legs', () => {
    expect(sectionPerimeterMm(section('L81x80x8'))).toBe(322);
  });

  it('a tube with a thin wall nears its box', () => {
    const thin: AnySection = { kind: 'tube', designation: 'T', depthMm: 100, widthMm: 50, thicknessMm: 1e-6 };
    expect(sectionPerimeterMm(thin)).toBeCloseTo(300, 4);
  });
});

describe('sectionPerimeterMm: values', () => {
  it.each([
    ['FB10x50', 120],
    ['RD20', 20 * Math.PI],
    ['SQ20', 80],
    ['UPN100', 388],
    ['CHS60.3x3.2', 60.3 * Math.PI],
    ['T50x50x6', 200],
  ])('of %s is %d mm', (text, perimeterMm) => {
    expect(sectionPerimeterMm(section(text))).toBeCloseTo(perimeterMm, 9);
  });

  it.each(everyKind)('shows its working for %s', (text) => {
    expect(expectWorking((working) => sectionPerimeterMm(section(text), working))).toHaveLength(1);
  });
});

describe('paintAreaMm2', () => {
  it.each([0, -1, Number.NaN, Infinity])('refuses a length of %d', (lengthMm) => {
    expect(refusal(() => paintAreaMm2({ section: section('FB10x50'), lengthMm })).argument).toBe('Length');
  });

  it.each(everyKind)('is perimeter × length for %s, with its working', (text) => {
    const input = { section: section(text), lengthMm: 2000 };
    const steps = expectWorking((working) => paintAreaMm2(input, working));
    expect(steps[1]?.result.value).toBe(2000 * sectionPerimeterMm(input.section));
  });
});
