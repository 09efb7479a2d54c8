import { costOf, isBetter, shortOf, type Cutting, type Packing } from './cutting.js';

/** The best plan so far and the best bound, in whole units. */
export interface Incumbent {
  readonly packing: Packing | undefined;
  readonly bound: number;
  /** True where the plan is better than the best so far. */
  offer: (packing: Packing) => boolean;
  /** Puts another plan of the same bars in the place of the best. */
  replace: (packing: Packing) => void;
  /** The bound, where it is above the best so far. */
  raise: (bound: number) => void;
  /** Whether no plan can be better. */
  isDone: () => boolean;
  /** Whether it is proven that the bars do not suffice for all pieces. */
  isShort: boolean;
}

/**
 * Keeps the best plan and the best bound, and tells of every better one.
 *
 * @param cutting items and stocks
 * @param onBetter called after each
 * @returns the keeper
 * Valid for every cutting. Throws nothing.
 * @example const best = incumbent(cutting, () => undefined)
 * Source: none; plain sense.
 */
export function incumbent(cutting: Cutting, onBetter: () => void): Incumbent {
  let packing: Packing | undefined;
  let bound = 0;
  const isDone = () =>
    packing !== undefined && shortOf(cutting, packing) === 0 && costOf(cutting, packing) <= bound;
  return {
    get packing() {
      return packing;
    },
    get bound() {
      return bound;
    },
    offer(other) {
      if (!isBetter(cutting, other, packing)) return false;
      packing = other;
      onBetter();
      return true;
    },
    replace(other) {
      packing = other;
    },
    raise(other) {
      if (other <= bound) return;
      bound = other;
      if (packing) onBetter();
    },
    isDone,
    isShort: false,
  };
}

/** What a better plan costs less than; Infinity where pieces are left out. */
export function belowOf(cutting: Cutting, { packing }: Incumbent): number {
  return packing && packing.short.every((count) => count === 0) ? costOf(cutting, packing) : Infinity;
}
