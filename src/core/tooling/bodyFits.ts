import { atMost } from '../atMost.js';
import { requirePositive } from '../requireRange.js';
import { lengthValue, textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { type Hole, punchDiagonalMm } from './hole.js';

export type BodyFit =
  | { fits: 'yes' }
  /** `sizeMm` must be at most `limitMm`. */
  | {
      fits: 'no';
      why: 'punch over its body' | 'punch over the station' | 'body over the station';
      sizeMm: number;
      limitMm: number;
    }
  | { fits: 'not known'; why: 'body' | 'station' };

/**
 * Whether a punch fits its own body, and its body the punch station.
 *
 * Formula: D ≤ B ≤ S, D the largest dimension of the punch (the diagonal of a shaped one)
 * @param input size of the punch; diameter B of its body and largest body S the station takes, in mm; a left out body
 *   or station is not known, a station without a limit is Infinity
 * @param working collects the step when given
 * @returns whether it fits; what is too large for what; or what is not known
 * Valid for sizes above zero; throws `invalid` otherwise. What is too large is known without the body too: the punch is
 * never larger than it.
 * @example bodyFits({ punch: { shape: 'square', sideMm: 25 }, bodyMm: 35, stationMm: 35 }) // fits: 'no', 35.36 over 35
 * Source: common practice, no source.
 */
export function bodyFits(
  input: { punch: Hole; bodyMm?: number; stationMm?: number },
  working?: Working,
): BodyFit {
  const { punch, bodyMm, stationMm } = input;
  const punchMm = punchDiagonalMm(punch);
  requirePositive('Punch', punchMm);
  if (bodyMm !== undefined) requirePositive('Body', bodyMm);
  if (stationMm !== undefined && stationMm !== Infinity) requirePositive('Punch body', stationMm);
  const fit = fitOf(punchMm, bodyMm, stationMm);
  working?.step({
    title: 'Punch body',
    formula: 'D ≤ B ≤ S',
    values: [
      lengthValue('D', 'largest dimension of the punch', punchMm),
      known('B', 'body of the punch', bodyMm),
      known('S', 'largest body of the station', stationMm),
    ],
    result: textValue('fits', 'the punch fits', fit.fits),
    source: 'common practice',
  });
  return fit;
}

function fitOf(punchMm: number, bodyMm: number | undefined, stationMm: number | undefined): BodyFit {
  if (bodyMm !== undefined && !atMost(punchMm, bodyMm)) {
    return { fits: 'no', why: 'punch over its body', sizeMm: punchMm, limitMm: bodyMm };
  }
  if (stationMm !== undefined && !atMost(punchMm, stationMm)) {
    return { fits: 'no', why: 'punch over the station', sizeMm: punchMm, limitMm: stationMm };
  }
  if (bodyMm !== undefined && stationMm !== undefined && !atMost(bodyMm, stationMm)) {
    return { fits: 'no', why: 'body over the station', sizeMm: bodyMm, limitMm: stationMm };
  }
  if (stationMm === undefined) return { fits: 'not known', why: 'station' };
  if (bodyMm === undefined && stationMm !== Infinity) return { fits: 'not known', why: 'body' };
  return { fits: 'yes' };
}

function known(symbol: string, meaning: string, value: number | undefined) {
  if (value === undefined) return textValue(symbol, meaning, 'not known');
  return value === Infinity ? textValue(symbol, meaning, 'none') : lengthValue(symbol, meaning, value);
}
