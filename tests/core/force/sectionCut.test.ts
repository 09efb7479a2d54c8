import { beforeAll, describe, expect, it } from 'vitest';
import { flatBarShearForceN } from '../../../src/core/force/flatBarShear.js';
import { sectionCutForceN } from '../../../src/core/force/sectionCut.js';
import { sectionShearForceN } from '../../../src/core/force/sectionShear.js';
import type { Section } from '../../../src/core/section/section.js';
import { expectFormula, openFormulaReferee } from '../../support/formulaReferee.js';
import { refusal } from '../../support/refusal.js';
import { expectWorking } from '../../support/working.js';

beforeAll(openFormulaReferee);

const degree = Math.PI / 180;
const grade = {
  name: 'Our own',
  family: 'steel',
  shearMPa: 300,
  densityKgPerM3: 7850,
  source: 'the test',
} as const;
const flat = {
  kind: 'flat',
  designation: 'FL 100 x 10',
  form: 'bar',
  thicknessMm: 10,
  widthMm: 100,
} as const;
const round = { kind: 'round', designation: 'RD 20', diameterMm: 20 } as const;

const cut = (section: Section, rake = 0, miter = 0) => ({
  section,
  grade,
  shearRatio: 0.8,
  rakeRad: rake * degree,
  miterRad: miter * degree,
});

describe('sectionCutForceN: limits', () => {
  it('refuses a rake and a miter outside the ranges of the two', () => {
    expect(refusal(() => sectionCutForceN(cut(flat, 31))).argument).toBe('Rake');
    expect(refusal(() => sectionCutForceN(cut(round, 0, 76))).argument).toBe('Miter');
  });
});

describe('sectionCutForceN: values', () => {
  it('a flat is cut by the raked blade, over a width that grows with the miter', () => {
    const strength = { thicknessMm: 10, shearStrengthMPa: 300 };
    for (const rake of [0, 4])
      for (const miter of [0, 30, 60]) {
        const widthMm = 100 / Math.cos(miter * degree);
        expect(sectionCutForceN(cut(flat, rake, miter))).toBeCloseTo(
          flatBarShearForceN({ ...strength, widthMm, rakeRad: rake * degree }),
          6,
        );
      }
    // At 60° from square the cut is twice as long.
    expect(sectionCutForceN(cut(flat, 0, 60))).toBeCloseTo(2 * 100 * 10 * 300, 6);
  });

  it('another section is cut by its area, whatever the rake', () => {
    const areaMm2 = Math.PI * 100;
    for (const miter of [0, 45]) {
      const input = { areaMm2, shearStrengthMPa: 300, miterRad: miter * degree };
      expect(sectionCutForceN(cut(round, 4, miter))).toBeCloseTo(sectionShearForceN(input), 6);
    }
  });

  it('shows its working, with the width of the cut where it is mitered', () => {
    const titles = (section: Section, miter: number) =>
      expectWorking((working) => sectionCutForceN(cut(section, 0, miter), working)).map(({ title }) => title);
    expect(titles(flat, 0)).toEqual(['Shear strength', 'Flat-bar shearing force']);
    expect(titles(flat, 30)).toEqual([
      'Shear strength',
      'Width of the mitered cut',
      'Flat-bar shearing force',
    ]);
    expect(titles(round, 30)).toEqual(['Shear strength', expect.any(String), 'Section shearing force']);
    const steps = expectWorking((working) => sectionCutForceN(cut(flat, 0, 30), working));
    expectFormula(steps[1]);
  });
});
