import { describe, expect, it } from 'vitest';
import { handOfEnd, legAtShear } from '../../../src/core/part/cutHand.js';

type Vector = readonly [number, number, number];
const cross = ([a, b, c]: Vector, [d, e, f]: Vector): Vector => [b * f - c * e, c * d - a * f, a * e - b * d];
const dot = (p: Vector, q: Vector) => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];

/** Positive for a cut that leans like / when the standing leg points at the eye and the heel is at the bottom. */
function lean(cut: Vector, heelToToe: Vector, standing: Vector): number {
  const along = cross(heelToToe, standing);
  return dot(cut, heelToToe) * dot(cut, along);
}

/** The cut of a right end with its long point at the heel runs up to the left. */
const leansOf = { left: 1, right: -1 };

describe('handOfEnd', () => {
  it('is of the end itself at the heel, of the other at the toe', () => {
    expect(handOfEnd('right', 'heel')).toBe('right');
    expect(handOfEnd('left', 'heel')).toBe('left');
    expect(handOfEnd('right', 'toe')).toBe('left');
    expect(handOfEnd('left', 'toe')).toBe('right');
  });

  it('is one for the two ends that one cut makes: the right end of one piece, the left end of the next', () => {
    expect(handOfEnd('right', 'heel')).toBe(handOfEnd('left', 'toe'));
    expect(handOfEnd('right', 'toe')).toBe(handOfEnd('left', 'heel'));
  });
});

describe('legAtShear', () => {
  // x to the right of who pushes the bar away from himself, y away, z up: the cut is farther away at its left.
  const cut: Vector = [-1, 1, 0];
  it.each([
    ['heel at the left', [1, 0, 0]],
    ['heel at the right', [-1, 0, 0]],
  ] as const)('lays the leg so that the cut has its hand, %s', (_, heelToToe) => {
    for (const hand of ['left', 'right'] as const) {
      const standing: Vector = [0, 0, legAtShear(hand) === 'up' ? 1 : -1];
      expect(Math.sign(lean(cut, heelToToe, standing))).toBe(leansOf[hand]);
    }
  });

  it('changes for a cut that is farther away at its right', () => {
    const standing: Vector = [0, 0, legAtShear('right') === 'up' ? -1 : 1];
    expect(Math.sign(lean([1, 1, 0], [1, 0, 0], standing))).toBe(leansOf.right);
  });
});
