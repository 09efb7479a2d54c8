import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/** How far the ram goes down from the top of its stroke to each stop. */
export interface RamTravel {
  upperMm: number;
  lowerMm: number;
}

/**
 * The stops of a punch as travel of the ram.
 *
 * Formula: travel = H − h − stop, H the open height of the press, h the height of the punch; H − h is where the tip of
 *   the punch stands at the top of the stroke
 * @param input height of the tip over the die at the top of the stroke; stops in mm from the top of the die
 * @param working collects the step when given
 * @returns travel in mm, down from the top of the stroke
 * Valid for any heights; where the tip stands under the upper stop its travel is negative.
 * @example ramTravel({ tipMm: 40, upperMm: 16, lowerMm: -2 }) // { upperMm: 24, lowerMm: 42 }
 * Source: plane geometry; common practice, no source.
 */
export function ramTravel(
  input: { tipMm: number; upperMm: number; lowerMm: number },
  working?: Working,
): RamTravel {
  const { tipMm, upperMm, lowerMm } = input;
  const travel = { upperMm: tipMm - upperMm, lowerMm: tipMm - lowerMm };
  working?.step({
    title: 'Travel of the ram',
    formula: 'travel = H − h − stop',
    values: [
      lengthValue('H − h', 'tip of the punch over the die at the top of the stroke', tipMm),
      lengthValue('upper', 'upper stop', upperMm),
      lengthValue('lower', 'lower stop', lowerMm),
      lengthValue('travel to upper', 'travel of the ram to the upper stop', travel.upperMm),
    ],
    result: lengthValue('travel to lower', 'travel of the ram to the lower stop', travel.lowerMm),
    source: 'common practice, no source',
  });
  return travel;
}
