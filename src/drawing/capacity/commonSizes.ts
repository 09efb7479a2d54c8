import { type LengthUnit, mmPer } from '../../core/quantity/units.js';

/** Thicknesses of flat stock a shop meets. Common practice, no source. */
const thicknesses: Record<LengthUnit, readonly number[]> = {
  in: [1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1],
  mm: [3, 4, 5, 6, 8, 10, 12, 15, 20, 25],
};

/** Marks along a scale of lengths; the coarsest that leaves at least three is taken. */
const steps: Record<LengthUnit, readonly number[]> = {
  in: [4, 2, 1, 1 / 2, 1 / 4, 1 / 8],
  mm: [100, 50, 20, 10, 5, 2],
};

const sameMm = 0.01;

/** The common thicknesses in mm, with another one in its place. */
export function commonThicknessesMm(unit: LengthUnit, other?: number): number[] {
  const common = thicknesses[unit].map((size) => size * mmPer[unit]);
  const known = other === undefined || common.some((size) => Math.abs(size - other) < sameMm);
  return (known ? common : [...common, other]).sort((a, b) => a - b);
}

/** Round marks from 0 to an end, in mm. */
export function scaleMarksMm(unit: LengthUnit, endMm: number): number[] {
  const end = endMm / mmPer[unit];
  const step = steps[unit].find((each) => end / each >= 3) ?? steps[unit].at(-1) ?? 1;
  return Array.from({ length: Math.floor(end / step + 1e-9) + 1 }, (_, at) => at * step * mmPer[unit]);
}

/** Sizes of bars and legs that shops stock. Common practice, no source. */
const bars: Record<LengthUnit, readonly number[]> = {
  in: [1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1, 1.125, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 3],
  mm: [6, 8, 10, 12, 14, 16, 18, 20, 22, 25, 28, 30, 32, 35, 40, 45, 50, 55, 60, 70, 80],
};
const legs: Record<LengthUnit, readonly number[]> = {
  in: [1.5, 2, 2.5, 3, 3.5, 4, 5, 6, 8],
  mm: [40, 50, 60, 70, 80, 90, 100, 120, 150, 200],
};
const angleThicknesses: Record<LengthUnit, readonly number[]> = {
  in: [1 / 8, 3 / 16, 1 / 4, 5 / 16, 3 / 8, 7 / 16, 1 / 2, 5 / 8, 3 / 4, 1],
  mm: [3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 15, 16, 18, 20],
};

const inMm = (sizes: Record<LengthUnit, readonly number[]>) => (unit: LengthUnit) =>
  sizes[unit].map((size) => size * mmPer[unit]);

export const commonBarsMm = inMm(bars);
export const commonLegsMm = inMm(legs);
export const angleThicknessesMm = inMm(angleThicknesses);

/** The step in which hole sizes are told on paper: punches are kept in sixteenths, or in whole millimeters. */
export const holeStepMm: Record<LengthUnit, number> = { in: mmPer.in / 16, mm: 1 };
