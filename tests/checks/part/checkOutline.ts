// The outline of a face against the clipper: whether its cuts leave one piece, which piece, and what made each edge.
import type { Pair, Ring } from 'polygon-clipping';
import type { CauseKind, Edge, Outline } from '../../../src/core/part/outline.js';
import type { OutlineInput } from '../../../src/core/part/outlineInput.js';
import { outlineOf } from '../../../src/core/part/outlineOf.js';
import { fits, left } from './areaReferee.js';
import { areaOf } from './clipper.js';
import { type Taken, takenFrom } from './edgeReferee.js';
import { libraryDistance } from './libraryReferee.js';
import type { GivenFace } from './randomPart.js';
import { require, toleranceMm } from './verdict.js';

export interface CheckedOutline {
  outline: Outline;
  /** The clipper's. */
  ring: Ring;
  taken: readonly Taken[];
}

/** Holds the outline of a face against the clipper; undefined where both say that the cuts do not fit. */
export function checkOutline(face: GivenFace): CheckedOutline | undefined {
  const outline = outlineOf(face.input);
  const what = () => JSON.stringify({ outline, face });
  require('edges' in outline === fits(face.input), () => `fits: ${fits(face.input)}, but ${what()}`);
  if ('problem' in outline) return undefined;
  const ring = ringOf(face, outline, what);
  const taken = takenFrom(face.input);
  for (const edge of outline.edges) checkCause(face.input, edge, taken, what);
  return { outline, ring, taken };
}

/** An edge borders on what its cause takes away, and is of the kind that was given with it. */
function checkCause(input: OutlineInput, edge: Edge, taken: readonly Taken[], what: () => string): void {
  const { from, to, cause, kind } = edge;
  const middle: Pair = [(from.x + to.x) / 2, (from.y + to.y) / 2];
  const borders = taken.find((each) => each.cause.is === cause.is && each.cause.number === cause.number);
  require(borders !== undefined && libraryDistance([middle], borders.area) <= toleranceMm, what);
  const at = (cause.number ?? 0) - 1;
  const kinds: Record<CauseKind, Edge['kind'] | undefined> = {
    'bottom edge': input.bottom.kind,
    heel: input.bottom.kind,
    'top edge': input.top.kind,
    toe: input.top.kind,
    'left end': input.left.kind,
    'miter left': input.left.kind,
    'right end': input.right.kind,
    'miter right': input.right.kind,
    clip: input.clips?.[at]?.kind,
    notch: input.notches?.[at]?.kind,
  };
  require(kind === kinds[cause.is], what);
}

/** The clipper's ring, once our outline has the same corners and covers the same area. */
function ringOf({ input }: GivenFace, { edges }: Outline, what: () => string): Ring {
  const ours = edges.map(({ from }): Pair => [from.x, from.y]);
  const theirs = left(input);
  const ring = theirs[0]?.[0];
  if (!ring || theirs.flat().length !== 1) throw new Error(`more or less than one piece: ${what()}`);
  require(Math.abs(areaOf([[ours]]) - areaOf(theirs)) <= toleranceMm * areaOf(theirs), what);
  require(ours.every((corner) => isCorner(corner, ring)) &&
    ring.every((corner) => isCorner(corner, ours)), what);
  return ring;
}

function isCorner([x, y]: Pair, ring: Ring): boolean {
  return ring.some(([cornerX, cornerY]) => Math.hypot(cornerX - x, cornerY - y) <= toleranceMm);
}
