// The steel between notches, and from a notch to the far edge and the ends, against a geometry library: each notch is a
// rectangle of its own, and the distance of two is the library's.
import Flatten from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import type { Notch, Side } from '../../../src/core/part/outlineInput.js';
import { outlineOf } from '../../../src/core/part/outlineOf.js';
import { sliverFindings } from '../../../src/core/row/layout/sliverFindings.js';
import { plateInput } from '../../support/face.js';
import { Random } from './random.js';

const { Box, Polygon, Segment, Point } = Flatten;

const [lengthMm, widthMm, thicknessMm] = [300, 100, 10];

interface Given {
  side: Side;
  centerMm: number;
  alongMm: number;
  depthMm: number;
}

function randomNotch(random: Random): Given {
  return {
    side: random.pick<Side>(['bottom', 'top']),
    centerMm: random.between(20, lengthMm - 20),
    alongMm: random.between(10, 36),
    depthMm: random.between(10, 97),
  };
}

function rectangle({ side, centerMm, alongMm, depthMm }: Given): Flatten.Polygon {
  const [y0, y1] = side === 'bottom' ? [0, depthMm] : [widthMm - depthMm, widthMm];
  return new Polygon(new Box(centerMm - alongMm / 2, y0, centerMm + alongMm / 2, y1));
}

/** The least steel beside any notch, to another, to the edge across from it and to the ends. */
function leastSteelMm(notches: readonly Given[]): number {
  const line = (x0: number, y0: number, x1: number, y1: number) =>
    new Segment(new Point(x0, y0), new Point(x1, y1));
  const ends = [line(0, 0, 0, widthMm), line(lengthMm, 0, lengthMm, widthMm)];
  return Math.min(
    ...notches.flatMap((notch, at) => {
      const own = rectangle(notch);
      const far = notch.side === 'bottom' ? line(0, widthMm, lengthMm, widthMm) : line(0, 0, lengthMm, 0);
      const others = notches.slice(at + 1).map(rectangle);
      return [...others, ...ends, far].map((other) => own.distanceTo(other)[0]);
    }),
  );
}

describe('steel between cuts against a geometry library', () => {
  it('fails exactly where it is thinner than the plate (common practice, no source)', () => {
    const random = new Random(11);
    const compared = { failed: 0, held: 0 };
    for (let at = 0; at < 1500; at++) {
      const given = Array.from({ length: 1 + random.count(2) }, () => randomNotch(random));
      const kind = 'sheared' as const;
      const notches = given.map(({ side, centerMm, alongMm, depthMm }): Notch => {
        const place = { at: 'edge', side, centerMm } as const;
        return { shape: 'rectangle', place, widthMm: alongMm, depthMm, kind };
      });
      const outline = outlineOf(plateInput({ notches }));
      if ('problem' in outline) continue;
      const leastMm = leastSteelMm(given);
      // Notches that overlap across the plate part it, or nearly so, and have no steel between them.
      if (leastMm < 1e-3 || Math.abs(leastMm - thicknessMm) < 1e-6) continue;
      const face = { id: 'plate', widthMm, thicknessMm, outline } as const;
      const found = sliverFindings({ lengthMm, endless: false, faces: [face], groups: [], bends: [] });
      const fails = found.some(({ outcome }) => outcome === 'failed');
      expect(fails, JSON.stringify({ given, leastMm })).toBe(leastMm < thicknessMm);
      compared[fails ? 'failed' : 'held'] += 1;
    }
    expect(compared.failed).toBeGreaterThan(200);
    expect(compared.held).toBeGreaterThan(200);
  });
});
