import type { AngleSection } from './section.js';

/**
 * How far from the heel the flat of a leg begins: its thickness and the fillet.
 *
 * Formula: k = t + r, and 2 · t where the radius is not known
 * @param section thickness t and root radius r in mm
 * @returns distance from the heel in mm
 * Valid for every angle. Throws nothing.
 * @example legRootMm({ ...section, thicknessMm: 8, rootRadiusMm: 10 }) // 18
 * Source: geometry; 2 · t common practice, no source.
 */
export function legRootMm({ thicknessMm, rootRadiusMm }: AngleSection): number {
  return thicknessMm + (rootRadiusMm > 0 ? rootRadiusMm : thicknessMm);
}
