// Holes against bend lines and the heel.
import type { Pair } from 'polygon-clipping';
import { bendClearances } from '../../../src/core/part/bendClearances.js';
import { heelDistance } from '../../../src/core/part/heelDistance.js';
import type { PlacedHole } from '../../../src/core/part/part.js';
import { grownHole } from './holeReferee.js';
import { libraryDistance } from './libraryReferee.js';
import type { GivenBend, GivenHole } from './randomPart.js';
import { signedDistance } from './signedDistance.js';
import { require, requireSpan, type Tally, toleranceMm } from './verdict.js';

/** Holds the clearances of all holes (`placed` stand in the order of `given`) from lines against the referees. */
export function checkLines(
  tally: Tally,
  given: readonly GivenHole[],
  placed: readonly PlacedHole[],
  givenBends: readonly GivenBend[],
): void {
  const bends = givenBends.map((bend) => ({ ...bend, insideRadiusMm: 10 }));
  bendClearances({ holes: placed, bends }, (hole, bend, { rim, center }) => {
    const { corners, radius } = grownHole(given[placed.indexOf(hole)] as GivenHole);
    const line: Pair[] = [
      [bend.from.x, bend.from.y],
      [bend.to.x, bend.to.y],
    ];
    const what = () => JSON.stringify({ rim, center, bend, hole });
    const middle: Pair[] = [[hole.center.x, hole.center.y]];
    require(Math.abs(rim.least.distance - (signedDistance(corners, line) - radius)) <= toleranceMm, what);
    require(Math.abs(center.least.distance - libraryDistance(middle, line)) <= toleranceMm, what);
    requireSpan(rim.least, what);
    tally.counts.bends++;
  });
  for (const [at, hole] of placed.entries()) checkHeel(given[at] as GivenHole, hole);
}

function checkHeel(given: GivenHole, hole: PlacedHole): void {
  const { corners, radius } = grownHole(given);
  const { rim, center } = heelDistance(hole);
  const what = () => JSON.stringify({ rim, center, hole });
  const lowest = Math.min(...corners.map(([, y]) => y)) - radius;
  require(Math.abs(rim.least - lowest) <= toleranceMm && rim.most === rim.least, what);
  require(center.least === given.center.y && center.most === given.center.y, what);
}
