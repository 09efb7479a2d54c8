import { refuse } from '../inputError.js';
import { requirePositive, requireWithin } from '../requireRange.js';
import type { Working } from '../working/working.js';

/** Share of the thickness a flat punch travels until the slug breaks (from memory). */
const penetrationShare = 0.38;
/** Shear ground on a punch is never credited with more than half the force (common practice). */
const leastFactor = 0.5;

/**
 * The force to punch one hole, or `count` equal holes in one hit.
 *
 * Formula: F = n · p · t · τ · c, with c = k · t / s, from 0.5 to 1, for a punch with shear of height s ground on it
 * (k = 0.38) and c = 1 for a flat one
 * @param input cut perimeter p of one hole and thickness t in mm, shear strength τ in MPa; count n (1); height s
 *   of the shear ground on the punch in mm (0)
 * @param working collects the steps when given
 * @returns force in N
 * Valid for positive sizes, 1 to 99 holes. Throws `invalid` outside that.
 * @example punchForceN({ cutPerimeterMm: Math.PI * 25, thicknessMm: 3.2, shearStrengthMPa: 700 }) // 175 929
 * Source: Groover, Fundamentals of Modern Manufacturing; Kalpakjian & Schmid, Manufacturing Engineering and
 *   Technology, sheet metal chapters. Shear on the punch: from memory, the cautious one of two textbook
 *   formulas (the other is k · t / (k · t + s)); its floor: common practice.
 */
export function punchForceN(
  input: {
    cutPerimeterMm: number;
    thicknessMm: number;
    shearStrengthMPa: number;
    count?: number;
    punchShearMm?: number;
  },
  working?: Working,
): number {
  const { cutPerimeterMm, thicknessMm, shearStrengthMPa, count = 1, punchShearMm = 0 } = input;
  requirePositive('Cut perimeter', cutPerimeterMm);
  requirePositive('Thickness', thicknessMm);
  requirePositive('Shear strength', shearStrengthMPa);
  requireWithin('Count', count, 1, 99);
  if (!Number.isInteger(count))
    refuse('Count', String(count), `${count} is not a whole number.`, 'Write 1, 2, 3.');
  const factor = punchShearMm === 0 ? 1 : punchShearFactor(thicknessMm, punchShearMm, working);
  const forceN = count * cutPerimeterMm * thicknessMm * shearStrengthMPa * factor;
  working?.step({
    title: 'Punching force',
    formula: `F = ${count === 1 ? '' : 'n · '}p · t · τ${factor === 1 ? '' : ' · c'}`,
    values: [
      ...(count === 1
        ? []
        : [{ symbol: 'n', meaning: 'holes in one hit', kind: 'count', value: count } as const]),
      { symbol: 'p', meaning: 'cut perimeter of one hole', kind: 'length', value: cutPerimeterMm },
      { symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm },
      { symbol: 'τ', meaning: 'shear strength', kind: 'stress', value: shearStrengthMPa },
      ...(factor === 1
        ? []
        : [{ symbol: 'c', meaning: 'factor for shear on the punch', kind: 'ratio', value: factor } as const]),
    ],
    result: { symbol: 'F', meaning: 'punching force', kind: 'force', value: forceN },
    source: 'Groover, Fundamentals of Modern Manufacturing, sheet metal chapter (from memory)',
  });
  return forceN;
}

function punchShearFactor(thicknessMm: number, punchShearMm: number, working?: Working): number {
  requirePositive('Shear on the punch', punchShearMm);
  const travelMm = penetrationShare * thicknessMm;
  const factor = Math.min(1, Math.max(leastFactor, travelMm / punchShearMm));
  working?.step({
    title: 'Shear ground on the punch',
    formula: 'c = k · t / s, at least 0.5, at most 1',
    values: [
      {
        symbol: 'k',
        meaning: 'travel to break, share of the thickness',
        kind: 'ratio',
        value: penetrationShare,
      },
      { symbol: 't', meaning: 'thickness', kind: 'length', value: thicknessMm },
      { symbol: 's', meaning: 'height of the shear', kind: 'length', value: punchShearMm },
    ],
    result: { symbol: 'c', meaning: 'factor for shear on the punch', kind: 'ratio', value: factor },
    source: 'general press practice (from memory); never below 0.5: common practice',
    cautions: ['Shear ground on the punch lengthens the stroke by its height.'],
  });
  return factor;
}
