import type { Grade } from '../material/grade.js';
import { shearStrengthMPa } from '../material/shearStrength.js';
import { sectionAreaMm2 } from '../section/area.js';
import { leastThicknessMm } from '../section/leastThickness.js';
import type { Section } from '../section/section.js';
import type { Working } from '../working/working.js';
import { flatBarShearForceN } from './flatBarShear.js';
import { sectionShearForceN } from './sectionShear.js';

export interface SectionCut {
  section: Section;
  grade: Grade;
  /** Shear strength as a share of the tensile strength, where the grade states none. */
  shearRatio: number;
  rakeRad: number;
  miterRad: number;
}

/**
 * The force of one clean cut through a section of a grade: flats under a raked blade, all others by area.
 *
 * Formula: flats by {@link flatBarShearForceN} over the width w / cos θ; others A · τ / cos θ
 * @param cut section in mm, angles in rad
 * @param working collects the steps when given
 * @returns force in N
 * Valid within the ranges of the two. Throws `invalid` outside them.
 * @example a flat 1/2 × 4 in of A36 at a rake of 4°
 * Source: Groover, Fundamentals of Modern Manufacturing (from memory).
 */
export function sectionCutForceN(cut: SectionCut, working?: Working): number {
  const { section, grade, shearRatio, rakeRad, miterRad } = cut;
  const strength = { grade, thicknessMm: leastThicknessMm(section), shearRatio };
  const shearStrength = shearStrengthMPa(strength, working);
  if (section.kind !== 'flat') {
    const areaMm2 = sectionAreaMm2(section, working);
    return sectionShearForceN({ areaMm2, shearStrengthMPa: shearStrength, miterRad }, working);
  }
  const widthMm = section.widthMm / Math.cos(miterRad);
  if (miterRad > 0) {
    working?.step({
      title: 'Width of the mitered cut',
      formula: 'w = b / cos θ',
      values: [
        { symbol: 'b', meaning: 'width of the flat', kind: 'length', value: section.widthMm },
        { symbol: 'θ', meaning: 'miter from square', kind: 'angle', value: miterRad },
      ],
      result: { symbol: 'w', meaning: 'width of the cut', kind: 'length', value: widthMm },
      source: 'plane geometry',
    });
  }
  const { thicknessMm } = section;
  return flatBarShearForceN({ widthMm, thicknessMm, shearStrengthMPa: shearStrength, rakeRad }, working);
}
