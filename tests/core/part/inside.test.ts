// A plate of 300 × 100 mm, on which a geometry library says whether a round hole lies.
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overhangMm } from '../../../src/core/part/inside.js';
import { outlineFor } from '../../support/face.js';

const { Point, Polygon } = Flatten;
const outline = outlineFor({
  clips: [{ end: 'left', side: 'top', alongMm: 40, acrossMm: 30, kind: 'sheared' }],
  notches: [
    {
      shape: 'vee',
      place: { at: 'edge', side: 'bottom', centerMm: 150 },
      widthMm: 60,
      depthMm: 40,
      kind: 'sheared',
    },
  ],
});
const ring = new Polygon(outline.edges.map(({ from }): [number, number] => [from.x, from.y]));

describe('overhangMm', () => {
  it('is 0 for a hole on the face, and the greatest of all overhangs for another', () => {
    const round = (x: number, y: number) => ({ core: [{ x, y }], radius: 10 });
    expect(overhangMm(outline, round(100, 50))).toBe(0);
    expect(overhangMm(outline, round(292, 96))).toBe(6);
    expect(overhangMm(outline, round(298, 92))).toBe(8);
    expect(overhangMm(outline, round(320, 92))).toBe(30);
  });

  it('is above 0 exactly where a geometry library finds a part of a round hole off the face', () => {
    const whole = (most: number) => fc.integer({ min: -20, max: most });
    fc.assert(
      fc.property(whole(320), whole(120), fc.integer({ min: 1, max: 40 }), (x, y, radius) => {
        const center = new Point(x, y);
        const apart = ring.contains(center) ? ring.distanceTo(center)[0] : -1;
        fc.pre(Math.abs(apart - radius) > 1e-5);
        expect(overhangMm(outline, { core: [{ x, y }], radius }) > 0).toBe(apart < radius);
      }),
    );
  });
});
