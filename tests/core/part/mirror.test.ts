import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { edgeClearances } from '../../../src/core/part/edgeClearances.js';
import { holePairs } from '../../../src/core/part/holePairs.js';
import { holeShape } from '../../../src/core/part/holeShape.js';
import type { CauseKind } from '../../../src/core/part/outline.js';
import type { FaceEnd, LongEdge, NotchPlace, OutlineInput } from '../../../src/core/part/outlineInput.js';
import { outlineOf } from '../../../src/core/part/outlineOf.js';
import type { PlacedHole } from '../../../src/core/part/part.js';
import type { Box } from '../../../src/core/part/shape.js';
import { Random } from '../../checks/part/random.js';
import { type GivenFace, type GivenHole, randomPart } from '../../checks/part/randomPart.js';
import { anyFreedom } from '../../support/randomShape.js';

interface Flip {
  x: boolean;
  y: boolean;
}

const flips: [string, Flip][] = [
  ['end for end', { x: true, y: false }],
  ['bottom for top', { x: false, y: true }],
  ['by half a turn', { x: true, y: true }],
];

describe.each(flips)('a part turned %s', (_name, flip) => {
  it('fits as before and has the same clearances from its edges', () => {
    fc.assert(
      fc.property(fc.integer(), fc.option(anyFreedom, { nil: undefined }), (seed, free) => {
        const { faces, holes } = randomPart(new Random(seed));
        for (const face of faces) {
          const own = holes.filter((hole) => hole.face === face.id);
          const before = distances(face, own, { x: false, y: false }, free, flip);
          const after = distances(face, own, flip, free, { x: false, y: false });
          expect(after?.length).toBe(before?.length);
          for (const [at, [name, value]] of before?.entries() ?? []) {
            expect(after?.[at]?.[0]).toBe(name);
            expect(Math.abs((after?.[at]?.[1] ?? NaN) - value)).toBeLessThan(2e-6);
          }
        }
      }),
    );
  });

  it('has the same clearances between its holes', () => {
    fc.assert(
      fc.property(fc.integer(), fc.option(anyFreedom, { nil: undefined }), (seed, free) => {
        const { faces, holes } = randomPart(new Random(seed));
        for (const { id, input } of faces) {
          const own = holes.filter((hole) => hole.face === id);
          const [before, after] = [{ x: false, y: false }, flip].map((by) =>
            pairs(own.map((hole) => placed(hole, input, by, free))),
          );
          expect(after?.length).toBe(before?.length);
          for (const [at, value] of before?.entries() ?? []) expect(after?.[at]).toBeCloseTo(value, 6);
        }
      }),
    );
  });
});

/** Least, most and the name of the cause of every pair, sorted; causes named as `naming` turns them. */
function distances(
  face: GivenFace,
  holes: readonly GivenHole[],
  flip: Flip,
  free: Box | undefined,
  naming: Flip,
): [string, number][] | undefined {
  const outline = outlineOf(turned(face.input, flip));
  if ('problem' in outline) return undefined;
  const found: [string, number][] = [];
  const own = holes.map((hole) => placed(hole, face.input, flip, free));
  edgeClearances(
    { id: face.id, widthMm: face.input.widthMm, thicknessMm: 8, outline },
    own,
    (hole, { cause, kind }, { rim, center, endRadius }) => {
      const name = `${hole.group} ${hole.index} ${namedAs(cause.is, naming, face.input)} ${cause.number ?? ''} ${kind}`;
      for (const [measure, range] of Object.entries({ rim, center, endRadius })) {
        found.push(
          [`${name} least ${measure}`, range.least.distance],
          [`${name} most ${measure}`, range.most],
        );
      }
    },
  );
  return found.sort(([a, x], [b, y]) => (a < b ? -1 : a > b ? 1 : x - y));
}

function pairs(holes: readonly PlacedHole[]): number[] {
  const found: number[] = [];
  const { within, pairs: all } = holePairs(holes, 50, (_a, _b, { least, most }, repeats) =>
    found.push(least.distance, most, repeats),
  );
  return [...found.sort((a, b) => a - b), within, all];
}

function placed(
  { face, group, index, hole, direction, center }: GivenHole,
  { lengthMm, widthMm }: OutlineInput,
  flip: Flip,
  free?: Box,
): PlacedHole {
  const at = { x: flip.x ? lengthMm - center.x : center.x, y: flip.y ? widthMm - center.y : center.y };
  return {
    face,
    group,
    index,
    center: at,
    shape: holeShape(hole, at, direction),
    ...(free && { free: turnedBox(free, flip) }),
  };
}

function turnedBox({ x0, x1, y0, y1 }: Box, flip: Flip): Box {
  return { x0: flip.x ? -x1 : x0, x1: flip.x ? -x0 : x1, y0: flip.y ? -y1 : y0, y1: flip.y ? -y0 : y1 };
}

function turned(input: OutlineInput, flip: Flip): OutlineInput {
  const end = (of: 'left' | 'right') => (flip.x ? ({ left: 'right', right: 'left' } as const)[of] : of);
  const side = (of: 'bottom' | 'top') => (flip.y ? ({ bottom: 'top', top: 'bottom' } as const)[of] : of);
  const faceEnd = ({ kind, miter }: FaceEnd): FaceEnd =>
    miter ? { kind, miter: { rad: miter.rad, long: side(miter.long) } } : { kind };
  const longEdge = ({ kind }: LongEdge, is: LongEdge['is']): LongEdge => ({ is, kind });
  const place = (of: NotchPlace): NotchPlace => {
    if (of.at === 'corner') return { at: 'corner', end: end(of.end), side: side(of.side) };
    if (of.at === 'edge')
      return {
        at: 'edge',
        side: side(of.side),
        centerMm: flip.x ? input.lengthMm - of.centerMm : of.centerMm,
      };
    return { at: 'end', end: end(of.end), centerMm: flip.y ? input.widthMm - of.centerMm : of.centerMm };
  };
  return {
    ...input,
    bottom: longEdge(flip.y ? input.top : input.bottom, input.bottom.is),
    top: longEdge(flip.y ? input.bottom : input.top, input.top.is),
    left: faceEnd(input[end('left')]),
    right: faceEnd(input[end('right')]),
    clips: (input.clips ?? []).map((clip) => ({ ...clip, end: end(clip.end), side: side(clip.side) })),
    notches: (input.notches ?? []).map((notch) => ({ ...notch, place: place(notch.place) })),
  };
}

/** What an edge is called once the part is turned. */
function namedAs(cause: CauseKind, flip: Flip, { bottom, top }: OutlineInput): CauseKind {
  const swapped: Partial<Record<CauseKind, CauseKind>> = {
    ...(flip.x && {
      'left end': 'right end',
      'right end': 'left end',
      'miter left': 'miter right',
      'miter right': 'miter left',
    }),
    ...(flip.y && { [bottom.is]: top.is, [top.is]: bottom.is }),
  };
  return swapped[cause] ?? cause;
}
