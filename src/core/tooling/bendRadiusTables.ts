/** Groups of steels for cold bending, ASTM A6 Table X4.1; of those only the ones of the built-in grades. */
export type BendGroup = 'B' | 'C' | 'F';

/**
 * Source: ASTM A6 Table X4.1 (from memory, in agreement with a reprint that lost its lines). Mild: common practice, as
 * A36. A992 is made as shapes and stands in no group.
 */
export const bendGroups: readonly { grade: string; group: BendGroup }[] = [
  { grade: 'Mild', group: 'B' },
  { grade: 'A36', group: 'B' },
  { grade: 'A529-50', group: 'C' },
  { grade: 'A572-50', group: 'C' },
  { grade: 'A588', group: 'C' },
  { grade: 'A514', group: 'F' },
];

/**
 * Source: ASTM A6 Table X4.2, suggested least inside radius for bends across the rolling direction, as a multiple of
 * the thickness (checked against a reprint). Its rows end at 3/4, 1 and 2 in [20, 25, 50 mm]; the larger of both counts.
 */
export const bendMultiples: readonly ({ upToMm: number } & Record<BendGroup, number>)[] = [
  { upToMm: 20, B: 1.5, C: 1.5, F: 1.75 },
  { upToMm: 25.4, B: 1.5, C: 1.5, F: 2.25 },
  { upToMm: 50.8, B: 1.5, C: 2, F: 4.5 },
  { upToMm: Infinity, B: 2, C: 2.5, F: 5.5 },
];

/** Least inside radius in mm: bend across the rolling direction, and along it. */
type RadiusPair = readonly [across: number, along: number];

/**
 * Source: EN 10025-2, recommended least inside radius for cold flanging to 90° of flat products, mm (checked against a
 * reprint). The grades there are those with the suffix C, such as S235JRC. Thicknesses above 1 mm.
 */
export const flangingRadii: readonly {
  upToMm: number;
  S235: RadiusPair;
  S275: RadiusPair;
  S355: RadiusPair;
}[] = [
  { upToMm: 1.5, S235: [1.6, 1.6], S275: [2, 2], S355: [2.5, 2.5] },
  { upToMm: 2.5, S235: [2.5, 2.5], S275: [3, 3], S355: [4, 4] },
  { upToMm: 3, S235: [3, 3], S275: [4, 4], S355: [5, 5] },
  { upToMm: 4, S235: [5, 6], S275: [5, 6], S355: [6, 8] },
  { upToMm: 5, S235: [6, 8], S275: [8, 10], S355: [8, 10] },
  { upToMm: 6, S235: [8, 10], S275: [10, 12], S355: [10, 12] },
  { upToMm: 7, S235: [10, 12], S275: [12, 16], S355: [12, 16] },
  { upToMm: 8, S235: [12, 16], S275: [16, 20], S355: [16, 20] },
  { upToMm: 10, S235: [16, 20], S275: [20, 25], S355: [20, 25] },
  { upToMm: 12, S235: [20, 25], S275: [25, 32], S355: [25, 32] },
  { upToMm: 14, S235: [25, 28], S275: [28, 36], S355: [32, 36] },
  { upToMm: 16, S235: [28, 32], S275: [32, 40], S355: [36, 40] },
  { upToMm: 18, S235: [36, 40], S275: [40, 45], S355: [45, 50] },
  { upToMm: 20, S235: [40, 45], S275: [45, 50], S355: [50, 63] },
  { upToMm: 25, S235: [50, 55], S275: [55, 60], S355: [65, 75] },
  { upToMm: 30, S235: [60, 70], S275: [70, 75], S355: [80, 90] },
];
export const flangingAboveMm = 1;
