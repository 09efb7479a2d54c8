// Pairs of holes: each against the library and the search by directions, and all of them against brute force.
import { holePairs } from '../../../src/core/part/holePairs.js';
import type { PlacedHole } from '../../../src/core/part/part.js';
import { type Grown, grownHole } from './holeReferee.js';
import { libraryDistance } from './libraryReferee.js';
import type { GivenHole } from './randomPart.js';
import { signedDistance } from './signedDistance.js';
import { require, requireSpan, type Tally, toleranceMm } from './verdict.js';

const reachMm = 40;
/** What stands this near a limit may fall on either side of it. */
const nearMm = 1e-5;

/** Holds all pairs of holes (`placed` stand in the order of `given`) against the referees. */
export function checkPairs(tally: Tally, given: readonly GivenHole[], placed: readonly PlacedHole[]): void {
  const grown = new Map(placed.map((hole, at) => [hole, grownHole(given[at] as GivenHole)]));
  const pairs = allPairs(placed, grown);
  const open = new Map(pairs.map((pair) => [keyOf(placed, pair.a, pair.b), pair]));
  const found = holePairs(placed, reachMm, (a, b, { least, most }, repeats) => {
    const pair = open.get(keyOf(placed, a, b));
    const what = () => `${JSON.stringify(least)}, ${repeats} ×, of ${JSON.stringify([a, b])}`;
    if (!pair || pair.repeats > 0) throw new Error(`not a pair, or twice: ${what()}`);
    pair.repeats = repeats;
    tally.agree(least.distance, pair.apart(), pair.bySearch, what);
    require(most === least.distance, what);
    requireSpan(least, what);
    tally.counts.pairs++;
    if (least.distance < -toleranceMm) tally.counts.overlaps++;
  });
  const what = () => JSON.stringify({ found, given });
  require(found.pairs === pairs.length, what);
  checkReach(pairs, found.within, what);
  checkOverlaps(pairs, what);
}

interface GivenPair {
  a: PlacedHole;
  b: PlacedHole;
  /** By the library, the radii taken off: no depth. */
  gap: number;
  bySearch: () => number;
  /** By the library where the cores are apart, else by the search. */
  apart: () => number;
  repeats: number;
}

function allPairs(placed: readonly PlacedHole[], grown: Map<PlacedHole, Grown>): GivenPair[] {
  return placed.flatMap((a, at) =>
    placed
      .slice(at + 1)
      .filter((b) => b.face === a.face)
      .map((b): GivenPair => {
        const [one, other] = [grown.get(a) as Grown, grown.get(b) as Grown];
        const radii = one.radius + other.radius;
        const cores = libraryDistance(one.corners, other.corners);
        let searched: number | undefined;
        const bySearch = () => (searched ??= signedDistance(one.corners, other.corners) - radii);
        return {
          a,
          b,
          gap: cores - radii,
          bySearch,
          apart: () => (cores === 0 ? bySearch() : cores - radii),
          repeats: 0,
        };
      }),
  );
}

function checkReach(pairs: readonly GivenPair[], within: number, what: () => string): void {
  const near = pairs.filter(({ gap }) => gap < reachMm - nearMm).length;
  const far = pairs.filter(({ gap }) => gap > reachMm + nearMm).length;
  require(within >= near && within <= pairs.length - far, what);
  for (const { gap, repeats } of pairs) {
    if (gap > nearMm && gap < reachMm - nearMm) require(repeats === 1, what);
    if (gap > reachMm + nearMm) require(repeats === 0, what);
  }
}

/** Of the overlaps of two groups the deepest is visited and stands for all of them. */
function checkOverlaps(pairs: readonly GivenPair[], what: () => string): void {
  const byGroups = new Map<string, GivenPair[]>();
  for (const pair of pairs) {
    // Two cores that touch have no gap by the library; the search says how deep they are.
    if (pair.gap > nearMm || (pair.gap > -nearMm && pair.bySearch() > -nearMm)) continue;
    const groups = `${pair.a.face} ${[pair.a.group, pair.b.group].sort((a, b) => a - b).join(' ')}`;
    byGroups.set(groups, [...(byGroups.get(groups) ?? []), pair]);
  }
  for (const overlaps of byGroups.values()) {
    const visited = overlaps.filter(({ repeats }) => repeats > 0);
    require(visited.length === 1 && visited[0]?.repeats === overlaps.length, what);
    const deepest = Math.min(...overlaps.map(({ bySearch }) => bySearch()));
    require(Math.abs((visited[0]?.bySearch() ?? 0) - deepest) <= 2 * toleranceMm, what);
  }
}

function keyOf(placed: readonly PlacedHole[], a: PlacedHole, b: PlacedHole): string {
  return [placed.indexOf(a), placed.indexOf(b)].sort((one, other) => one - other).join(' ');
}
