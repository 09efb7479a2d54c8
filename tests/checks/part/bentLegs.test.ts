// A plate folded step by step by a geometry library: the leg that is bent already, turned with the web it stands on as the
// other bend reaches 90°, is never nearer to the middle of the punch than in the end.
import Flatten from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { legBesidePunch } from '../../../src/core/part/legBesidePunch.js';
import { Random } from './random.js';

const { Point, Segment, Line } = Flatten;

/** The least distance of a leg from the middle of the punch, below 0 beyond it, as its web rises to 45°. */
function foldedGapMm(webMm: number, legMm: number): number {
  const origin = new Point(0, 0);
  const middle = new Line(origin, new Point(0, 1));
  const leg = new Segment(new Point(webMm, 0), new Point(webMm + legMm, 0)).rotate(
    Math.PI / 2,
    new Point(webMm, 0),
  );
  const steps = Array.from({ length: 91 }, (_, degree) => leg.rotate((degree / 2 / 180) * Math.PI, origin));
  const gaps = steps.flatMap(({ ps, pe }) =>
    [ps, pe].map((point) => Math.sign(point.x) * point.distanceTo(middle)[0]),
  );
  return Math.min(...gaps);
}

describe('a leg beside the punch, folded by a geometry library', () => {
  it('comes as near as is said', () => {
    const random = new Random(3);
    for (let at = 0; at < 500; at++) {
      const [short, webMm] = [random.between(5, 200), random.between(5, 400)];
      const long = short + random.between(0, 200);
      const found = legBesidePunch([short, short + webMm], 0, short + webMm + long);
      expect(found?.gapMm).toBeCloseTo(foldedGapMm(webMm, short), 6);
    }
  });
});
