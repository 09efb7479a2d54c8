import { InputError } from '../inputError.js';
import type { EdgeCode } from './edgeDistance.js';

/**
 * Where a distance of a hole starts: its center, or the center of the end radius of a slot, which for a slot along
 * the edge is as far from it as the center.
 */
export type MeasuredFrom = 'center' | 'end radius center';

/** What is not known, so that no least distance can be named. */
export type UnknownRule =
  /** The rule goes by the bolt, and there is none. */
  | 'no bolt'
  /** The code's table has no row for the bolt. */
  | 'bolt not in the table'
  /** The code's rule for a hole larger than its standard one is not built in. */
  | 'oversize hole'
  /** The code's rule for slots is not built in. */
  | 'slot'
  /** No code has a rule for a square, a rectangle or a hexagon. */
  | 'shape of the hole';

/** A least distance by a code, with all that a check and its sentence need. */
export interface KnownDistance {
  known: true;
  leastMm: number;
  measuredFrom: MeasuredFrom;
  source: string;
  /** Between two holes: the least steel from rim to rim, where the code asks for that too. */
  clearMm?: number;
  /** The hole is larger than the largest the code knows for the bolt; its excess is in the distance. */
  beyondTable?: 'larger than oversize' | 'longer than a long slot';
}

/** No least distance is known: the check stays open, but for what is certain about it. */
export interface UnknownDistance {
  known: false;
  why: UnknownRule;
  /** Center to edge, or center to center: nearer than this is too near whatever the rule may be. */
  failsUnderMm?: number;
  /** This far is far enough whatever the rule may be. */
  holdsFromMm?: number;
  /** Codes by which the distance is known. */
  otherCodes?: EdgeCode[];
  source?: string;
}

export type LeastDistance = KnownDistance | UnknownDistance;

/** What a table gives for a bolt; undefined where it has no row for it. Any other refusal stays one. */
export function ifTabled(lookUp: () => number): number | undefined {
  try {
    return lookUp();
  } catch (error) {
    if (error instanceof InputError && error.failure.code === 'unknown') return undefined;
    throw error;
  }
}
