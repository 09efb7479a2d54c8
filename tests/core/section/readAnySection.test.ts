import { describe, expect, it } from 'vitest';
import type { LengthUnit } from '../../../src/core/quantity/units.js';
import { readAnySection } from '../../../src/core/section/readAnySection.js';
import { isSawn } from '../../../src/core/section/section.js';
import { refusal, refusalText } from '../../support/refusal.js';

const read = (text: string, unit: LengthUnit = 'in') => readAnySection(text, 'Section', unit);
const inch = 25.4;

describe('readAnySection: arguments', () => {
  it.each([
    'HSS',
    'HSS4',
    'HSS4X4X1/4X10X3',
    'HSS4XX1/4',
    'TUBE 2x1/8',
    'RHS100x5',
    'PIPE 3',
    'PIPE 2',
    'PIPE 2 SCH 10',
    'PIPE 7 STD',
    'W12X27',
    'HEA165',
    'IPE200A',
    'CHS60',
  ])('refuses %j', (text) => {
    expect(refusal(() => read(text)).argument).toBe('Section');
  });

  it.each(['T3', 'T3X3', 'TEE 3x3', 'T3X3X3/8X10X2'])('refuses %j', (text) => {
    expect(refusal(() => read(text)).argument).toBe('Section');
  });
});

describe('readAnySection: limits', () => {
  it('a wall is under half the tube', () => {
    expect(read('HSS4.000X1.999').section).toMatchObject({ kind: 'round tube' });
    expect(refusalText(() => read('CHS4x2'))).toContain('not under half the tube');
    expect(refusalText(() => read('HSS4x4x2x100'))).toContain('not under half the tube');
  });

  it('a tee is thinner than its flange and stem', () => {
    expect(read('T3X2X1.9').section).toMatchObject({ kind: 'tee' });
    expect(refusalText(() => read('T3X2X2'))).toContain('not less than its flange and stem');
  });

  it('refuses dimensions in the wrong unit', () => {
    expect(refusalText(() => read('RHS100x50x5', 'in'))).toContain('100 would be 100 inches');
    expect(refusalText(() => read('HSS4X4X.25', 'mm'))).toContain('would be 4 mm');
  });
});

describe('readAnySection: values', () => {
  it.each([
    ['HSS4X4X1/4', 'in', 'HSS4X4X1/4', 4 * inch, 4 * inch, inch / 4],
    ['hss 4x6x3/16', 'in', 'HSS6X4X3/16', 6 * inch, 4 * inch, (3 * inch) / 16],
    ['TUBE 2x2x1/8', 'in', 'HSS2X2X1/8', 2 * inch, 2 * inch, inch / 8],
    ['RHS100x50x5', 'mm', 'RHS100X50X5', 100, 50, 5],
    ['SHS50x50x3', 'mm', 'SHS50X50X3', 50, 50, 3],
    ['SHS50x3', 'mm', 'SHS50X50X3', 50, 50, 3],
  ] as const)('%s in %s is %s', (text, unit, designation, depthMm, widthMm, thicknessMm) => {
    const { section } = read(text, unit);
    expect(section).toEqual({
      kind: 'tube',
      designation,
      depthMm: expect.closeTo(depthMm, 9) as number,
      widthMm: expect.closeTo(widthMm, 9) as number,
      thicknessMm: expect.closeTo(thicknessMm, 9) as number,
    });
  });

  it.each([
    ['HSS4.000X0.250', 'in', 'HSS4X1/4', 4 * inch, inch / 4],
    ['CHS60.3x3.2', 'mm', 'CHS60.3X3.2', 60.3, 3.2],
    ['PIPE 60.3x3.2', 'mm', 'CHS60.3X3.2', 60.3, 3.2],
    ['pipe 2.375 x 0.154', 'in', 'HSS2-3/8X0.154', 2.375 * inch, 0.154 * inch],
  ] as const)('%s in %s is %s', (text, unit, designation, diameterMm, thicknessMm) => {
    const { section } = read(text, unit);
    expect(section).toEqual({
      kind: 'round tube',
      designation,
      diameterMm: expect.closeTo(diameterMm, 9) as number,
      thicknessMm: expect.closeTo(thicknessMm, 9) as number,
    });
  });

  it.each([
    ['T3X3X3/8', 'in', 'T3X3X3/8', 3 * inch, 3 * inch, (3 * inch) / 8],
    ['tee 4x2x1/4', 'in', 'T4X2X1/4', 4 * inch, 2 * inch, inch / 4],
    ['T50x50x6', 'mm', 'T50X50X6', 50, 50, 6],
  ] as const)('%s in %s is %s', (text, unit, designation, flangeWidthMm, depthMm, thicknessMm) => {
    const { section } = read(text, unit);
    expect(section).toEqual({
      kind: 'tee',
      designation,
      flangeWidthMm: expect.closeTo(flangeWidthMm, 9) as number,
      depthMm: expect.closeTo(depthMm, 9) as number,
      thicknessMm: expect.closeTo(thicknessMm, 9) as number,
    });
  });

  it.each([
    ["HSS4X4X1/4X10'-0", 'in', 'tube', 3048],
    ["HSS4.000X0.250X10'-0", 'in', 'round tube', 3048],
    ['CHS60.3x3.2x6000', 'mm', 'round tube', 6000],
    ['SHS50x3x6000', 'mm', 'tube', 6000],
    ['RHS100x50x5x6000', 'mm', 'tube', 6000],
    ['T3X3X3/8X2\'-6"', 'in', 'tee', 762],
  ] as const)('%s has a length behind it', (text, unit, kind, lengthMm) => {
    const found = read(text, unit);
    expect(found.section.kind).toBe(kind);
    expect(found.lengthMm).toBeCloseTo(lengthMm, 9);
  });

  it.each([
    ['PIPE 1-1/2 STD', 'PIPE1-1/2STD', 1.9, 0.145],
    ['PIPE2STD', 'PIPE2STD', 2.375, 0.154],
    ['2" SCH 40 PIPE', 'PIPE2STD', 2.375, 0.154],
    ['1 1/2 std pipe', 'PIPE1-1/2STD', 1.9, 0.145],
    ['PIPE 3 XS', 'PIPE3XS', 3.5, 0.3],
    ['PIPE 4 X-STRONG', 'PIPE4XS', 4.5, 0.337],
    ['PIPE 6 SCH. 80', 'PIPE6XS', 6.625, 0.432],
    ['PIPE 2 XXS', 'PIPE2XXS', 2.375, 0.436],
  ] as const)('%s is %s in every shop', (text, designation, outsideIn, wallIn) => {
    for (const unit of ['in', 'mm'] as const)
      expect(read(text, unit).section).toEqual({
        kind: 'round tube',
        designation,
        diameterMm: expect.closeTo(outsideIn * inch, 9) as number,
        thicknessMm: expect.closeTo(wallIn * inch, 9) as number,
      });
  });

  it('a pipe keeps the length behind it', () => {
    expect(read("PIPE 2 STD X 20'-0").lengthMm).toBeCloseTo(6096, 9);
  });

  it.each([
    ['QRO 50x3', 'SHS50X50X3'],
    ['QRO 50x50x3', 'SHS50X50X3'],
    ['RRO 100x50x5', 'RHS100X50X5'],
    ['RO 60,3x3,2', 'CHS60.3X3.2'],
    ['ROHR 60.3x3.2', 'CHS60.3X3.2'],
    ['Rohr 100x50x5', 'RHS100X50X5'],
    ['Quadratrohr 50x3', 'SHS50X50X3'],
    ['T 50', 'T50X50X6'],
  ])('%s is %s', (text, designation) => {
    expect(read(text, 'mm').section.designation).toBe(designation);
  });

  it.each([
    ['W12X26', 'W12X26', 12.2, 6.49],
    ['w 12 x 26', 'W12X26', 12.2, 6.49],
    ['W12X26#', 'W12X26', 12.2, 6.49],
    ['W 8x31 lbs', 'W8X31', 8, 8],
    ['S8X18.4', 'S8X18.4', 8, 4],
    ['WT6X13', 'WT6X13', 6.1, 6.49],
  ])('%s is the beam %s in every shop', (text, name, depthIn, flangeIn) => {
    for (const unit of ['in', 'mm'] as const)
      expect(read(text, unit).section).toMatchObject({
        kind: 'beam',
        name,
        depthMm: expect.closeTo(depthIn * inch, 6) as number,
        flangeWidthMm: expect.closeTo(flangeIn * inch, 6) as number,
      });
  });

  it.each([
    ['IPE 200', 'IPE200'],
    ['HEA160', 'HEA160'],
    ['HE 160 A', 'HEA160'],
    ['HE-A 160', 'HEA160'],
    ['IPBl 160', 'HEA160'],
    ['IPB 200', 'HEB200'],
    ['HE200B', 'HEB200'],
    ['HEM 300', 'HEM300'],
    ['INP 200', 'IPN200'],
  ])('%s is the beam %s in every shop', (text, name) => {
    for (const unit of ['in', 'mm'] as const) expect(read(text, unit).section.designation).toBe(name);
  });

  it('a beam keeps the length behind it', () => {
    expect(read('IPE200x6000', 'mm').lengthMm).toBe(6000);
    expect(read("W12X26X20'-0").lengthMm).toBeCloseTo(6096, 9);
  });

  it('only tubes, tees and beams are sawn', () => {
    for (const text of ['PL1/2X6', 'L3X3X1/4', 'C8X11.5', 'RB 1', 'SQ 3/4']) {
      expect(isSawn(read(text).section)).toBe(false);
    }
    for (const text of ['HSS4X4X1/4', 'HSS4.000X0.250', 'T3X3X3/8', 'PIPE 2 STD', 'W12X26', 'IPE200'])
      expect(isSawn(read(text).section)).toBe(true);
  });
});
