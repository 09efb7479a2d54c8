import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { type Hole, leastDimensionMm } from './hole.js';

/** The opening of a die: one dimension, or the width and length of a slot or rectangle. */
export interface DieOpening {
  widthMm: number;
  lengthMm?: number;
}

const sizeNames: Record<Hole['shape'], string> = {
  round: 'diameter',
  square: 'side',
  hexagon: 'width across flats',
  slot: 'width',
  rectangle: 'width',
};

/**
 * The die opening for a hole: the hole's own size with the total clearance added to each dimension.
 *
 * Formula: D = d + c; slot and rectangle also L = l + c
 * @param input the hole and the total clearance c, both sides together, in mm
 * @param working collects the steps when given
 * @returns diameter, side, width across flats, or width and length, in mm
 * Valid for positive dimensions; throws `invalid` otherwise.
 * @example dieOpening({ hole: { shape: 'round', diameterMm: 22 }, totalClearanceMm: 0.8 }) // { widthMm: 22.8 }
 * Source: the definition of the total clearance; Groover, Fundamentals of Modern Manufacturing, die size for a hole
 *   (from memory).
 */
export function dieOpening(input: { hole: Hole; totalClearanceMm: number }, working?: Working): DieOpening {
  const { hole, totalClearanceMm } = input;
  requirePositive('Total clearance', totalClearanceMm);
  const leastMm = leastDimensionMm(hole);
  requirePositive('Hole', leastMm);
  const oblong = hole.shape === 'slot' || hole.shape === 'rectangle';
  const lengthMm = oblong
    ? opened(['L', 'l'], 'length', Math.max(hole.widthMm, hole.lengthMm), totalClearanceMm, working)
    : undefined;
  const widthMm = opened(['D', 'd'], sizeNames[hole.shape], leastMm, totalClearanceMm, working);
  return lengthMm === undefined ? { widthMm } : { widthMm, lengthMm };
}

function opened(
  [symbol, of]: [string, string],
  name: string,
  sizeMm: number,
  totalClearanceMm: number,
  working?: Working,
): number {
  requirePositive('Hole', sizeMm);
  const openingMm = sizeMm + totalClearanceMm;
  working?.step({
    title: `Die opening, ${name}`,
    formula: `${symbol} = ${of} + c`,
    values: [
      lengthValue(of, `${name} of the hole`, sizeMm),
      lengthValue('c', 'total die clearance, both sides', totalClearanceMm),
    ],
    result: lengthValue(symbol, `${name} of the die opening`, openingMm),
    source: 'definition of the total clearance',
  });
  return openingMm;
}
