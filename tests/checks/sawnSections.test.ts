import { polygonArea, polygonLength } from 'd3-polygon';
import { describe, expect, it } from 'vitest';
import { kilogramPerPound, type LengthUnit, mmPerFoot } from '../../src/core/quantity/units.js';
import { sectionAreaMm2 } from '../../src/core/section/area.js';
import { sectionMassKg } from '../../src/core/section/mass.js';
import { sectionPerimeterMm } from '../../src/core/section/perimeter.js';
import { readAnySection } from '../../src/core/section/readAnySection.js';
import { expectPrinted } from '../support/printed.js';

type Point = [number, number];
const section = (text: string, unit: LengthUnit) => readAnySection(text, 'Section', unit).section;
const cm2 = (text: string) => sectionAreaMm2(section(text, 'mm')) / 100;
const m2PerMeter = (text: string) => sectionPerimeterMm(section(text, 'mm')) / 1000;
const kgPerMeter = (text: string) =>
  sectionMassKg({ section: section(text, 'mm'), lengthMm: 1000, densityKgPerM3: 7850 });
/** The tables of the manual weigh steel at 490 lb/ft³. */
const poundPerFoot = (text: string) =>
  sectionMassKg({
    section: section(text, 'in'),
    lengthMm: mmPerFoot,
    densityKgPerM3: (490 * kilogramPerPound) / (mmPerFoot / 1000) ** 3,
  }) / kilogramPerPound;

function arc(x: number, y: number, radius: number, from: number): Point[] {
  const steps = 500;
  return Array.from({ length: steps + 1 }, (_, step) => {
    const angle = from + (Math.PI / 2) * (step / steps);
    return [x + radius * Math.cos(angle), y + radius * Math.sin(angle)];
  });
}

/** The outline of a rectangle with rounded corners, its center at the origin. */
function box(a: number, b: number, radius: number): Point[] {
  const [x, y] = [a / 2 - radius, b / 2 - radius];
  const quarter = Math.PI / 2;
  return [
    ...arc(x, y, radius, 0),
    ...arc(-x, y, radius, quarter),
    ...arc(-x, -y, radius, 2 * quarter),
    ...arc(x, -y, radius, 3 * quarter),
  ];
}
const closed = (outline: Point[]): Point[] => [...outline, outline[0] ?? [0, 0]];
const enclosed = (outline: Point[]) => Math.abs(polygonArea(outline));

describe('Tubes and tees against a geometry library (polygon area and length of the outline)', () => {
  it.each([
    ['RHS100x50x5', 100, 50, 5],
    ['SHS50x50x3', 50, 50, 3],
    ['RHS150x100x6', 150, 100, 6],
  ])('%s', (text, a, b, t) => {
    const outside = box(a, b, 2 * t);
    const inside = box(a - 2 * t, b - 2 * t, t);
    expect((cm2(text) * 100) / (enclosed(outside) - enclosed(inside))).toBeCloseTo(1, 4);
    expect((m2PerMeter(text) * 1000) / polygonLength(closed(outside))).toBeCloseTo(1, 4);
  });

  it('CHS60.3x3.2', () => {
    const circle = (diameter: number) => box(diameter, diameter, diameter / 2);
    const ring = enclosed(circle(60.3)) - enclosed(circle(53.9));
    expect((cm2('CHS60.3x3.2') * 100) / ring).toBeCloseTo(1, 4);
    expect((m2PerMeter('CHS60.3x3.2') * 1000) / polygonLength(closed(circle(60.3)))).toBeCloseTo(1, 4);
  });

  it('T60x50x6', () => {
    const outline: Point[] = [
      [-30, 0],
      [30, 0],
      [30, 6],
      [3, 6],
      [3, 50],
      [-3, 50],
      [-3, 6],
      [-30, 6],
    ];
    expect((cm2('T60x50x6') * 100) / enclosed(outline)).toBeCloseTo(1, 9);
    expect((m2PerMeter('T60x50x6') * 1000) / polygonLength(closed(outline))).toBeCloseTo(1, 9);
  });
});

describe('EN 10219-2 tubes (from memory): cm², kg/m, m²/m', () => {
  it.each([
    ['RHS100x50x5', '13.4', '10.5', '0.283'],
    ['SHS50x50x3', '5.41', '4.25', '0.190'],
    ['SHS100x100x5', '18.4', '14.4', '0.383'],
    ['CHS60.3x3.2', '5.74', '4.51', '0.189'],
    ['CHS48.3x3.2', '4.53', '3.56', '0.152'],
  ])('%s: %s, %s, %s', (text, area, mass, surface) => {
    expectPrinted(cm2(text), area);
    expectPrinted(kgPerMeter(text), mass);
    expectPrinted(m2PerMeter(text), surface);
  });
});

describe('AISC Manual Part 1, tubes by the nominal wall (from memory): lb/ft', () => {
  it.each([
    ['HSS4X4X1/4', '12.21'],
    ['HSS6X4X3/16', '11.97'],
    ['HSS4.000X0.250', '10.0'],
  ])('%s: %s', (text, mass) => {
    expectPrinted(poundPerFoot(text), mass);
  });
});

describe('EN 10055 equal tees (from memory): cm², kg/m; ours are sharp and not tapered, within 1%', () => {
  it.each([
    ['T50x50x6', 5.66, 4.44],
    ['T60x60x7', 7.94, 6.23],
    ['T80x80x9', 13.6, 10.7],
    ['T100x100x11', 20.9, 16.4],
  ])('%s: %d, %d', (text, area, mass) => {
    expect(Math.abs(cm2(text) / area - 1)).toBeLessThan(0.01);
    expect(Math.abs(kgPerMeter(text) / mass - 1)).toBeLessThan(0.01);
  });
});

describe('Surface of bars and shapes (from memory): m²/m', () => {
  it.each([
    ['L50x50x5', '0.194'], // EN 10056-1
    ['L80x80x8', '0.311'],
    ['L100x100x10', '0.390'],
    ['FB10x50', '0.120'], // EN 10058
    ['SQ20', '0.080'], // EN 10059
    ['RD25', '0.0785'], // EN 10060
  ])('%s: %s', (text, surface) => {
    expectPrinted(m2PerMeter(text), surface);
  });

  it.each([
    ['UPN100', 0.372],
    ['UPN200', 0.661],
  ])('EN 10365, %s: %d; ours is sharp, 0 to 5 %% more', (text, surface) => {
    expect(m2PerMeter(text) / surface).toBeGreaterThan(1);
    expect(m2PerMeter(text) / surface).toBeLessThan(1.05);
  });
});
