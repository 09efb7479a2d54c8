import { describe, expect, it } from 'vitest';
import { sizeProblem } from '../../../src/core/part/outlineSizes.js';
import { toleranceMm } from '../../../src/core/part/tolerance.js';
import { plateInput } from '../../support/face.js';

const face = plateInput();
const clip = (alongMm: number, acrossMm: number) =>
  ({ end: 'left', side: 'top', alongMm, acrossMm, kind: 'sheared' }) as const;
const inEdge = (widthMm: number, depthMm: number, centerMm = 150) =>
  ({
    shape: 'rectangle',
    place: { at: 'edge', side: 'top', centerMm },
    widthMm,
    depthMm,
    kind: 'sheared',
  }) as const;
const none = [0, -1, toleranceMm, Infinity, NaN];

describe('sizeProblem: what is no size', () => {
  it.each(none)('a length or a width of %d', (size) => {
    expect(sizeProblem({ ...face, lengthMm: size })).toEqual({ problem: 'no size' });
    expect(sizeProblem({ ...face, widthMm: size })).toEqual({ problem: 'no size' });
  });

  it.each(none)('either size of a clip or a notch, told by its number: %d', (size) => {
    for (const clips of [[clip(size, 20)], [clip(20, size)]])
      expect(sizeProblem({ ...face, clips: [clip(20, 20), ...clips] })).toEqual({
        problem: 'no size',
        cause: { is: 'clip', number: 2 },
      });
    for (const notches of [[inEdge(size, 20)], [inEdge(20, size)]])
      expect(sizeProblem({ ...face, notches: [inEdge(20, 20), ...notches] })).toEqual({
        problem: 'no size',
        cause: { is: 'notch', number: 2 },
      });
  });

  it.each([-0.01, Math.PI / 2, 2, NaN])('a miter of %d rad, told by its end', (rad) => {
    const end = { kind: 'sheared', miter: { rad, long: 'top' } } as const;
    expect(sizeProblem({ ...face, left: end })).toEqual({ problem: 'no size', cause: { is: 'miter left' } });
    expect(sizeProblem({ ...face, right: end })).toEqual({
      problem: 'no size',
      cause: { is: 'miter right' },
    });
  });

  it.each([Infinity, NaN])('a place of a notch at %d', (centerMm) => {
    expect(sizeProblem({ ...face, notches: [inEdge(20, 20, centerMm)] })?.cause).toEqual({
      is: 'notch',
      number: 1,
    });
  });
});

describe('sizeProblem: what is a size', () => {
  it('a face with every cut, with square ends written as miters of 0, and a notch at a place before the face', () => {
    const corner = { ...inEdge(20, 20), place: { at: 'corner', end: 'left', side: 'bottom' } } as const;
    const [left, right] = [0, 1.5].map((rad) => ({ kind: 'sheared', miter: { rad, long: 'top' } }) as const);
    if (!left || !right) throw new Error('Both ends are given.');
    const input = {
      ...face,
      left,
      right,
      clips: [clip(2 * toleranceMm, 20)],
      notches: [corner, inEdge(5, 5, -40)],
    };
    expect(sizeProblem(input)).toBeUndefined();
  });
});
