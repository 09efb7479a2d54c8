import type { End } from './outlineInput.js';

/** The hand of a mitered end of an angle; `both`: one of each. */
export type Hand = 'left' | 'right';

/** Where the mitered leg of an angle has its long point. */
export type LongPoint = 'heel' | 'toe';

/**
 * The hand of a mitered end of an angle. The piece lies with the mitered leg flat, the other leg standing up, and the
 * heel at whoever looks: a right end with its long point at the heel is right-hand, and so is a left end with its long
 * point at the toe, since one and the same cut makes both. No turning of the bar makes one hand of the other.
 *
 * Formula: the end where the long point is at the heel, the other end where it is at the toe
 * @param end which end of the piece, as it lies
 * @param long where the mitered leg has its long point
 * @returns the hand of the cut
 * Valid for angles mitered in one leg: a flat turned over has the other hand.
 * Throws nothing.
 * @example handOfEnd('left', 'heel') // 'left'
 * Source: common practice, no source.
 */
export function handOfEnd(end: End, long: LongPoint): Hand {
  return (end === 'right') === (long === 'heel') ? 'right' : 'left';
}

/**
 * How the standing leg of an angle lies at the shear for a cut of a hand: the leg turned from down to up mirrors the cut.
 * For a shear whose cut is farther away at its left, seen by who pushes the bar away from himself; on a shear that
 * slants the other way, up and down change places.
 */
export function legAtShear(hand: Hand): 'down' | 'up' {
  return hand === 'right' ? 'down' : 'up';
}
