import { mmPerInch } from './unitFactors.js';

export * from './unitFactors.js';

/** The two systems a shop can work in: what a bare number of length means, and what results are given in. */
export type LengthUnit = 'in' | 'mm';

export const mmPer: Record<LengthUnit, number> = { in: mmPerInch, mm: 1 };
