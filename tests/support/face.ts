// A plain plate to cut from, and holes in it.
import { type Direction, holeShape } from '../../src/core/part/holeShape.js';
import type { Outline } from '../../src/core/part/outline.js';
import type { OutlineInput } from '../../src/core/part/outlineInput.js';
import { outlineOf } from '../../src/core/part/outlineOf.js';
import type { Face, PlacedHole } from '../../src/core/part/part.js';
import type { Box } from '../../src/core/part/shape.js';
import type { Hole } from '../../src/core/tooling/hole.js';

/** A plate of 300 × 100 mm with rolled long edges and sheared ends, changed as said. */
export function plateInput(changes: Partial<OutlineInput> = {}): OutlineInput {
  return {
    lengthMm: 300,
    widthMm: 100,
    bottom: { is: 'bottom edge', kind: 'rolled' },
    top: { is: 'top edge', kind: 'rolled' },
    left: { kind: 'sheared' },
    right: { kind: 'sheared' },
    ...changes,
  };
}

export function outlineFor(changes: Partial<OutlineInput> = {}): Outline {
  const outline = outlineOf(plateInput(changes));
  if ('problem' in outline) throw new Error(JSON.stringify(outline));
  return outline;
}

export function plateFace(changes: Partial<OutlineInput> = {}): Face {
  return { id: 'plate', widthMm: plateInput(changes).widthMm, thicknessMm: 10, outline: outlineFor(changes) };
}

export interface HoleAt {
  hole?: Hole;
  direction?: Direction;
  group?: number;
  index?: number;
  free?: Box;
}

/** A round hole of 20 mm, unless said otherwise. */
export function holeAt(x: number, y: number, at: HoleAt = {}): PlacedHole {
  const { hole = { shape: 'round', diameterMm: 20 }, direction = 'along', group = 0, index = 0, free } = at;
  const center = { x, y };
  const placed = { face: 'plate', group, index, center, shape: holeShape(hole, center, direction) } as const;
  return free ? { ...placed, free } : placed;
}
