// What is bent along a line, and how long its flanges are, against a geometry library: a row of places along the line is
// looked at one by one, whether it has steel on both sides and how far the steel goes on from there.
import Flatten from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { bentSpans, type LineOverFace } from '../../../src/core/part/bentSpans.js';
import { flangeBeside } from '../../../src/core/part/flangeBeside.js';
import type { Outline } from '../../../src/core/part/outline.js';
import { outlineOf } from '../../../src/core/part/outlineOf.js';
import { Random } from './random.js';
import { randomPart } from './randomPart.js';

const { Point, Polygon, Segment } = Flatten;

const besideMm = 1e-4;
const slightMm = 1e-3;
const stepMm = 0.01;
const farMm = 2000;
const placesTried = 60;
const parts = Number(process.env.REFEREE_PARTS ?? 400);
const seed = Number(process.env.REFEREE_SEED ?? 7);

function pointOf({ runs, atMm }: LineOverFace, alongMm: number, beyondMm: number): Flatten.Point {
  return runs === 'across' ? new Point(atMm + beyondMm, alongMm) : new Point(alongMm, atMm + beyondMm);
}

/** How far the steel goes on from a place beside the line; 0 where there is none. */
function steelBeyond(ring: Flatten.Polygon, line: LineOverFace, alongMm: number, side: -1 | 1): number {
  const start = pointOf(line, alongMm, besideMm * side);
  if (!ring.contains(start)) return 0;
  const ray = new Segment(start, pointOf(line, alongMm, farMm * side));
  return Math.min(...ray.intersect(ring).map((met) => met.distanceTo(start)[0])) + besideMm;
}

interface Compared {
  bent: number;
  free: number;
  flanges: number;
}

function compare(outline: Outline, line: LineOverFace, reachMm: number, compared: Compared): void {
  const ring = new Polygon(outline.edges.map(({ from }): [number, number] => [from.x, from.y]));
  const spans = bentSpans(outline, line);
  const least = spans.map((span) => ({
    span,
    flanges: ([-1, 1] as const).map((side) => ({
      side,
      flange: flangeBeside(line, span, side, outline.edges),
    })),
  }));
  for (let place = 0; place < placesTried; place++) {
    const alongMm = ((place + 0.37) / placesTried) * reachMm;
    const own = least.find(({ span }) => alongMm > span.fromMm && alongMm < span.toMm);
    const edge = spans.some(
      ({ fromMm, toMm }) => Math.min(Math.abs(alongMm - fromMm), Math.abs(alongMm - toMm)) < slightMm,
    );
    if (edge) continue;
    const beyond = ([-1, 1] as const).map((side) => steelBeyond(ring, line, alongMm, side));
    expect(
      beyond.every((mm) => mm > 0),
      JSON.stringify({ outline, line, alongMm }),
    ).toBe(own !== undefined);
    compared[own ? 'bent' : 'free'] += 1;
    for (const each of own?.flanges ?? []) {
      const mm = beyond[each.side === -1 ? 0 : 1] ?? 0;
      // Nowhere is the flange shorter than its least.
      expect(mm).toBeGreaterThanOrEqual((each.flange?.mm ?? Infinity) - slightMm);
    }
  }
  for (const { span, flanges } of least) {
    for (const { side, flange } of flanges) {
      expect(flange).toBeDefined();
      if (!flange) continue;
      // And where it is said to be shortest, it is as short as that.
      const [at] = flange.at;
      const alongMm = line.runs === 'across' ? at.y : at.x;
      const within = Math.min(Math.max(alongMm, span.fromMm + stepMm), span.toMm - stepMm);
      const seenMm = steelBeyond(ring, line, within, side);
      // The steepest cut is 50 deep and 2.5 wide: a step aside changes the length by 20 steps.
      expect(Math.abs(seenMm - flange.mm), JSON.stringify({ line, flange })).toBeLessThan(25 * stepMm);
      compared.flanges += 1;
    }
  }
}

describe('bends over random faces against a geometry library', () => {
  it('agree in what is bent and in the least flange', { timeout: 3_600_000 }, () => {
    const random = new Random(seed);
    const compared: Compared = { bent: 0, free: 0, flanges: 0 };
    for (let part = 0; part < parts; part++) {
      for (const { input } of randomPart(random).faces) {
        const outline = outlineOf(input);
        if ('problem' in outline) continue;
        const runs = random.pick<'across' | 'along'>(['across', 'along']);
        const [sizeMm, reachMm] =
          runs === 'across' ? [input.lengthMm, input.widthMm] : [input.widthMm, input.lengthMm];
        compare(outline, { runs, atMm: random.between(0.02, 0.98) * sizeMm }, reachMm, compared);
      }
    }
    expect(compared.bent).toBeGreaterThan(25 * parts);
    expect(compared.free).toBeGreaterThan(0.75 * parts);
    expect(compared.flanges).toBeGreaterThan(1.25 * parts);
  });
});
