// How a number of ours and one of a referee are checked against each other, and what was counted on the way.
import { expect } from 'vitest';

/** What the work promises, and everything is held to. */
export const toleranceMm = 1e-6;

export class Tally {
  readonly counts = { fit: 0, refused: 0, distances: 0, overhangs: 0, pairs: 0, overlaps: 0, bends: 0 };
  /** Distances where the library is off by more than the tolerance and the search by directions is not. */
  libraryErrors = 0;

  /** Where the two differ, the search by directions decides, and the case is counted. */
  agree(ours: number, library: number, bySearch: () => number, what: () => string): void {
    if (Math.abs(ours - library) <= toleranceMm) return;
    require(Math.abs(ours - bySearch()) <= toleranceMm, () =>
      `${what()}: ${ours}, by the library ${library}`);
    this.libraryErrors++;
  }
}

/** Fails with a message that is made only then: millions of comparisons have none. */
export function require(holds: boolean, what: () => string): void {
  if (!holds) expect.fail(what());
}

/** The two places of a clearance must be as far apart as it says. */
export function requireSpan({ distance, at: [a, b] }: Spanned, what: () => string): void {
  const span = Math.hypot(b.x - a.x, b.y - a.y);
  require(Math.abs(span - Math.abs(distance)) <= toleranceMm, () =>
    `${what()}: ${distance} over a span of ${span}`);
}

interface Spanned {
  distance: number;
  at: readonly [{ x: number; y: number }, { x: number; y: number }];
}
