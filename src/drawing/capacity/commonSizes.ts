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

/** Marks of a logarithmic scale: halves and doubles in inches, 1, 2, 5 in mm. */
export function logMarksMm(unit: LengthUnit, fromMm: number, toMm: number): number[] {
  const marks =
    unit === 'in' ? [1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 8, 16, 32] : [2, 5, 10, 20, 50, 100, 200, 500, 1000];
  return marks.map((mark) => mark * mmPer[unit]).filter((mm) => mm >= fromMm && mm <= toMm);
}
