import { describe, expect, it } from 'vitest';
import { holeShape } from '../../../src/core/part/holeShape.js';
import type { PlacedHole } from '../../../src/core/part/part.js';
import { checkFace } from './checkFace.js';
import { checkLines } from './checkLines.js';
import { checkPairs } from './checkPairs.js';
import { clipperFaults } from './clipper.js';
import { Random } from './random.js';
import { type GivenHole, randomPart } from './randomPart.js';
import { Tally } from './verdict.js';

const parts = Number(process.env.REFEREE_PARTS ?? 2000);
const seed = Number(process.env.REFEREE_SEED ?? 1);

describe(`${parts} random parts against a geometry library, a polygon clipper and a search by directions`, () => {
  it('agree in what fits, in outlines, clearances, containment and depth', { timeout: 3_600_000 }, () => {
    const random = new Random(seed);
    const tally = new Tally();
    for (let at = 0; at < parts; at++) {
      const { faces, holes, bends } = randomPart(random);
      const placed = holes.map(placedHole);
      for (const face of faces) checkFace(tally, face, holes, placed);
      checkPairs(tally, holes, placed);
      checkLines(tally, holes, placed, bends);
    }
    const faults = { library: tally.libraryErrors, clipper: clipperFaults.count };
    if (process.env.REFEREE_PARTS) console.log(JSON.stringify({ parts, seed, ...tally.counts, faults }));
    // Every kind of case must come up, and the referees themselves be wrong as seldom as they were seen to be.
    for (const [kind, count] of Object.entries(tally.counts)) expect(count, kind).toBeGreaterThan(parts / 10);
    expect(faults.library).toBeLessThanOrEqual(tally.counts.distances / 10_000);
    expect(faults.clipper).toBeLessThanOrEqual(parts / 500);
  });
});

function placedHole({ face, group, index, center, hole, direction }: GivenHole): PlacedHole {
  return { face, group, index, center, shape: holeShape(hole, center, direction) };
}
