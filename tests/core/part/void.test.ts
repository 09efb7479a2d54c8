// A plate of 300 × 100 mm with a notch of 60 × 40 mm in the middle of its bottom edge, and with a vee of the same size.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Notch } from '../../../src/core/part/outlineInput.js';
import { clearOf, clearOfLine, liesIn, type Void, voidsOf } from '../../../src/core/part/void.js';
import { signedDistance } from '../../checks/part/signedDistance.js';
import { outlineFor } from '../../support/face.js';
import { anyShape } from '../../support/randomShape.js';

const notch = (shape: Notch['shape']): Notch => ({
  shape,
  place: { at: 'edge', side: 'bottom', centerMm: 150 },
  widthMm: 60,
  depthMm: 40,
  kind: 'sheared',
});
const voids = (shape: Notch['shape']) => voidsOf(outlineFor({ notches: [notch(shape)] }));
const ofNotch = (shape: Notch['shape']) => voids(shape).find(({ notch: area }) => area) as Void;
const round = (x: number, y: number, radius: number) => ({ core: [{ x, y }], radius });
const slot = (x0: number, x1: number, y: number, radius: number) => ({
  core: [
    { x: x0, y },
    { x: x1, y },
  ],
  radius,
});

describe('the voids around a face', () => {
  it('are one for each boundary, and one for all edges of a notch, in the order of the edges', () => {
    const names = voids('rectangle').map(({ edges }) => edges.map(({ cause }) => cause.is));
    expect(names).toEqual([
      ['bottom edge'],
      ['notch', 'notch', 'notch'],
      ['bottom edge'],
      ['right end'],
      ['top edge'],
      ['left end'],
    ]);
    expect(voids('vee').map(({ edges }) => edges.length)).toEqual([1, 2, 1, 1, 1, 1]);
  });
});

describe('the distance from a void', () => {
  // The notch and what lies below its mouth; the vee opens on like a fan.
  const areas = {
    rectangle: [
      [120, 40],
      [120, -9000],
      [180, -9000],
      [180, 40],
    ],
    vee: [
      [150, 40],
      [-6600, -8960],
      [6900, -8960],
    ],
  } as const;

  it.each(['rectangle', 'vee'] as const)('of a %s is what a search by directions finds', (shape) => {
    const around = ofNotch(shape);
    const area = areas[shape].map(([x, y]): [number, number] => [x, y]);
    fc.assert(
      fc.property(anyShape, ({ core, radius }) => {
        const moved = core.map(({ x, y }) => ({ x: x + 150, y: y + 20 }));
        const referee =
          signedDistance(
            moved.map(({ x, y }): [number, number] => [x, y]),
            area,
          ) - radius;
        expect(clearOf(around, { core: moved, radius }).distance).toBeCloseTo(referee, 5);
      }),
      { numRuns: 60 },
    );
  });

  it.each([
    ['left', 'bottom', -1, 1],
    ['left', 'top', -1, -1],
    ['right', 'bottom', 1, 1],
    ['right', 'top', 1, -1],
  ] as const)('of a flat vee in a miter goes on square to it: %s, %s', (end, long, outX, outY) => {
    const vee: Notch = {
      ...notch('vee'),
      place: { at: 'end', end, centerMm: 50 },
      widthMm: 90,
      depthMm: 0.001,
    };
    const mitered = { [end]: { kind: 'sheared', miter: { rad: Math.PI / 4, long } }, notches: [vee] };
    const around = voidsOf(outlineFor(mitered)).find(({ notch: area }) => area) as Void;
    // From the middle of the end 40 mm outward, square to it.
    const [x, y] = [(end === 'left' ? 50 : 250) + outX * 40 * Math.SQRT1_2, 50 + outY * 40 * Math.SQRT1_2];
    expect(clearOf(around, round(x, y, 10)).distance).toBeCloseTo(-50, 2);
  });

  it('of one edge goes on beyond its ends, and is measured where the shape comes nearest to its line', () => {
    const [bottom] = voids('rectangle');
    if (!bottom) throw new Error('A plate has a bottom edge.');
    expect(clearOf(bottom, round(700, 25, 10))).toEqual({
      distance: 15,
      at: [
        { x: 700, y: 15 },
        { x: 700, y: 0 },
      ],
    });
    const [edge] = bottom.edges;
    if (!edge) throw new Error('A boundary has an edge.');
    const tilted = {
      core: [
        { x: 50, y: 30 },
        { x: 60, y: -4 },
      ],
      radius: 3,
    };
    expect(clearOfLine(edge, tilted)).toEqual({
      distance: -7,
      at: [
        { x: 60, y: -7 },
        { x: 60, y: 0 },
      ],
    });
  });
});

describe('a shape in a void', () => {
  const around = ofNotch('rectangle');

  it('lies in it with all of it, or does not', () => {
    expect(liesIn(around, round(150, 20, 10))).toBe(true);
    expect(liesIn(around, round(150, 35, 10))).toBe(false);
    expect(liesIn(around, slot(140, 160, 20, 10))).toBe(true);
    // One of its two ends alone.
    expect(liesIn(around, slot(140, 175, 20, 10))).toBe(false);
    expect(liesIn(around, slot(90, 150, 20, 10))).toBe(false);
    expect(liesIn(around, round(150, 70, 10))).toBe(false);
  });

  it('may touch its boundary from within, as near as the tolerance', () => {
    expect(liesIn(around, round(150, 30, 10))).toBe(true);
    expect(liesIn(around, round(150, 30, 10 + 5e-7))).toBe(true);
    expect(liesIn(around, round(150, 30, 10 + 2e-6))).toBe(false);
  });
});
