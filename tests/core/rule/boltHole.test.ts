import { describe, expect, it } from 'vitest';
import { boltHole, type HoleCode, type HoleFit } from '../../../src/core/rule/boltHole.js';
import { readBolt } from '../../../src/core/rule/boltSize.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

const hole = (size: string, fit: HoleFit, code: HoleCode) =>
  boltHole({ bolt: readBolt(size, 'Bolt', 'in'), fit, code });

describe('boltHole: arguments', () => {
  it.each([
    ['AISC', 'medium'],
    ['EN', 'anchor rod'],
    ['ISO 273', 'standard'],
  ] as const)('%s refuses the fit %s and names its own', (code, fit) => {
    const failure = refusal(() => hole('M20', fit, code));
    expect(failure).toMatchObject({ code: 'invalid', argument: 'Fit' });
    expect(failure.allowed).toMatch(/^Allowed: \w+, /);
  });

  it.each([
    ['EN', 'standard'],
    ['ISO 273', 'medium'],
  ] as const)('%s refuses inch bolts', (code, fit) => {
    expect(refusal(() => hole('3/4', fit, code)).code).toBe('unknown');
  });

  it('refuses a metric anchor rod', () => {
    expect(refusal(() => hole('M20', 'anchor rod', 'AISC')).code).toBe('unknown');
  });

  it.each([0, Number.NaN])('refuses a diameter of %d', (diameterMm) => {
    const bolt = { diameterMm, system: 'mm', name: 'M' } as const;
    expect(refusal(() => boltHole({ bolt, fit: 'standard', code: 'AISC' })).argument).toBe('Bolt');
  });
});

describe('boltHole: limits', () => {
  it.each([
    ['3/8', 'AISC', '1/2, 5/8, 3/4, 7/8, 1, 1-1/8 and above'],
    ['13/16', 'AISC', '1/2, 5/8, 3/4, 7/8, 1, 1-1/8 and above'],
    ['M12', 'AISC', 'M16, M20, M22, M24, M27, M30, M36 and above'],
    ['M33', 'AISC', 'M16, M20, M22, M24, M27, M30, M36 and above'],
    ['M6', 'EN', 'M8, M10, M12, M14'],
    ['M68', 'EN', 'M60, M64'],
  ] as const)('refuses %s under %s with the sizes there are', (size, code, sizes) => {
    const failure = refusal(() => hole(size, 'standard', code));
    expect(failure.code).toBe('unknown');
    expect(failure.allowed).toContain(sizes);
  });

  it('takes the table to 1 in and M30, the additions from 1-1/8 in and M36', () => {
    expect(hole('1', 'oversize', 'AISC').widthMm / 25.4).toBeCloseTo(1.25, 9);
    expect(hole('1-1/8', 'oversize', 'AISC').widthMm / 25.4).toBeCloseTo(1.4375, 9);
    expect(hole('M30', 'oversize', 'AISC').widthMm).toBe(38);
    expect(hole('M36', 'oversize', 'AISC').widthMm).toBe(44);
  });
});

describe('boltHole: values', () => {
  it('gives a diameter for round holes and width and length for slots', () => {
    expect(hole('M20', 'standard', 'AISC')).toEqual({ widthMm: 22 });
    expect(hole('M20', 'long slot', 'AISC')).toEqual({ widthMm: 22, lengthMm: 50 });
    expect(hole('M24', 'short slot', 'EN')).toEqual({ widthMm: 26, lengthMm: 32 });
  });

  it('grows from size to size of a table and from fit to fit, in every table', () => {
    const en = [8, 10, 12, 14, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 42, 45, 48, 52, 56, 60, 64];
    const tables: [HoleCode, number[], HoleFit[]][] = [
      ['AISC', [16, 20, 22, 24, 27, 30, 36, 42, 48, 64], ['standard', 'oversize']],
      ['EN', en, ['standard', 'oversize']],
      ['ISO 273', [5, 6, ...en], ['fine', 'medium', 'coarse']],
    ];
    for (const [code, diameters, fits] of tables) {
      let before = fits.map(() => 0);
      for (const diameter of diameters) {
        const widths = fits.map((fit) => hole(`M${diameter}`, fit, code).widthMm);
        expect([diameter, ...widths]).toEqual([...new Set([diameter, ...widths])].sort((a, b) => a - b));
        for (const [at, width] of widths.entries()) expect(width).toBeGreaterThan(before[at] ?? NaN);
        before = widths;
      }
    }
  });

  it('is larger than its bolt, and grows from standard to oversize', () => {
    for (const [size, code] of [
      ['3/4', 'AISC'],
      ['1-1/2', 'AISC'],
      ['M24', 'AISC'],
      ['M24', 'EN'],
    ] as const) {
      const bolt = readBolt(size, 'Bolt', 'in');
      const standard = boltHole({ bolt, fit: 'standard', code }).widthMm;
      expect(standard).toBeGreaterThan(bolt.diameterMm);
      expect(boltHole({ bolt, fit: 'oversize', code }).widthMm).toBeGreaterThan(standard);
    }
  });

  it('shows its working, with a step for the length of a slot', () => {
    const steps = (fit: HoleFit) =>
      expectWorking(
        (working) => boltHole({ bolt: readBolt('M20', 'Bolt', 'mm'), fit, code: 'AISC' }, working).widthMm,
      );
    expect(steps('standard')).toHaveLength(1);
    expect(steps('long slot').map((step) => step.result.value)).toEqual([50, 22]);
    expect(steps('long slot').map((step) => step.result.meaning)).toEqual([
      'slot length over all',
      'slot width',
    ]);
    expect(steps('standard')[0]?.result.meaning).toBe('hole diameter');
  });

  it.each([
    ['3/4', 'standard', 'AISC', 'AISC 360-22 Table J3.3 (from memory)'],
    ['1-1/4', 'oversize', 'AISC', 'AISC 360-22 Table J3.3 (from memory)'],
    ['M20', 'long slot', 'AISC', 'AISC 360-22 Table J3.3M'],
    ['3/4', 'anchor rod', 'AISC', 'AISC Design Guide 1, second edition (2006), Table 2.3'],
    ['M20', 'short slot', 'EN', 'EN 1090-2 Table 11'],
    ['M20', 'coarse', 'ISO 273', 'ISO 273 (from memory)'],
  ] as const)('names the table that %s, %s by %s is from: %s', (size, fit, code, source) => {
    const bolt = readBolt(size, 'Bolt', 'in');
    const steps = expectWorking((working) => boltHole({ bolt, fit, code }, working).widthMm);
    for (const step of steps) {
      expect(step.source).toBe(source);
      expect(step.values.map(({ value }) => value)).toEqual([bolt.diameterMm, fit]);
    }
  });
});
