import { type Press, pressValue, type PressValue } from './press.js';
import type { PressItemKey } from './item/pressItem.js';
import { legPositions } from './readPressValue.js';

/** Which hands of miter the angle shear of a press makes, and where it is not both, why. */
export type ShearHands =
  | { makes: 'both' }
  | { makes: 'one'; leg: 'down' | 'up' }
  | { makes: 'none'; why: 'no station' | 'square only' }
  | { makes: 'unknown'; item: PressItemKey; cell: 'blank' | 'unreadable' };

/**
 * The hands of miter that the angle shear of a press makes: with its leg down the one, up the other, as `legAtShear` has them.
 *
 * Formula: by the rows Angle shear, Angle shear legs mitered and Angle shear leg position
 * @param press the press
 * @returns the hands; `unknown` with the cell that is blank or cannot be read
 * Valid for every press. Throws nothing.
 * @example shearHands(press).makes // 'both'
 * Source: the plate and manual of the press.
 */
export function shearHands(press: Press): ShearHands {
  for (const [key, why] of [
    ['angleShear', 'no station'],
    ['angleShearLegsMitered', 'square only'],
  ] as const) {
    const value = pressValue(press, key);
    if (value.state !== 'value') return unknown(key, value.state);
    if (value.value === 0) return { makes: 'none', why };
  }
  const position = pressValue(press, 'angleShearLegPosition');
  const leg = position.state === 'value' ? legPositions[position.value] : undefined;
  if (leg === undefined) return unknown('angleShearLegPosition', position.state);
  return leg === 'both' ? { makes: 'both' } : { makes: 'one', leg };
}

function unknown(item: PressItemKey, state: PressValue['state']): ShearHands {
  return { makes: 'unknown', item, cell: state === 'bad' ? 'unreadable' : 'blank' };
}
