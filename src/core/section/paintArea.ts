import { requirePositive } from '../requireRange.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { sectionPerimeterMm } from './perimeter.js';
import type { AnySection } from './section.js';

/**
 * The surface of a piece that is painted: its outside along the length, without its two ends.
 *
 * Formula: S = u · L
 * @param input the section; length L in mm
 * @param working collects the steps when given
 * @returns surface in mm²
 * Valid for lengths above zero; throws `invalid` otherwise.
 * @example a meter of L100x100x10: 389 700 mm² (0.390 m²)
 * Source: plane geometry; perimeters by {@link sectionPerimeterMm}.
 */
export function paintAreaMm2(input: { section: AnySection; lengthMm: number }, working?: Working): number {
  const { section, lengthMm } = input;
  requirePositive('Length', lengthMm);
  const perimeterMm = sectionPerimeterMm(section, working);
  const areaMm2 = perimeterMm * lengthMm;
  working?.step({
    title: `Surface to paint of ${section.designation}`,
    formula: 'S = u · L',
    values: [lengthValue('u', 'outside perimeter', perimeterMm), lengthValue('L', 'length', lengthMm)],
    result: { symbol: 'S', meaning: 'surface to paint', kind: 'surface', value: areaMm2 },
    source: 'plane geometry; the two ends are not counted',
  });
  return areaMm2;
}
