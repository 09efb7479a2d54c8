import type { Hole } from '../../../core/tooling/hole.js';
import type { Shape } from '../drawing.js';
import { ellipse, polygon, rectangle, segment } from '../path.js';
import { type View, xOf, yOf } from './partView.js';
import type { PlacedGroup } from './placedHoles.js';

const beyond = 5;
const leastRadius = 2.5;

/** Every hole of a group that lies in the ends shown, with its centre lines. */
export function holeShapes({ holes }: PlacedGroup, view: View): Shape[] {
  return holes.flatMap(({ group, alongMm, acrossMm }) => {
    const x = xOf(view, alongMm);
    if (x === undefined) return [];
    const y = yOf(view, acrossMm);
    const half = halfSize(group.hole, view.pixelPerMm);
    return [
      { kind: 'area', path: holePath(group.hole, x, y, half), fill: 'paper', line: 'outline' },
      { kind: 'line', path: segment(x - half.x - beyond, y, x + half.x + beyond, y), line: 'centre' },
      { kind: 'line', path: segment(x, y - half.y - beyond, x, y + half.y + beyond), line: 'centre' },
    ];
  });
}

/** The checks take a slot with its length towards the edge, so that is how it lies; a rectangle lies along the part. */
export function halfSize(hole: Hole, pixelPerMm: number): { x: number; y: number } {
  const half = (mm: number) => Math.max((mm * pixelPerMm) / 2, leastRadius);
  switch (hole.shape) {
    case 'round':
      return { x: half(hole.diameterMm), y: half(hole.diameterMm) };
    case 'square':
      return { x: half(hole.sideMm), y: half(hole.sideMm) };
    case 'hexagon':
      return { x: half((2 / Math.sqrt(3)) * hole.acrossFlatsMm), y: half(hole.acrossFlatsMm) };
    case 'slot':
      return { x: half(hole.widthMm), y: half(hole.lengthMm) };
    case 'rectangle':
      return { x: half(hole.lengthMm), y: half(hole.widthMm) };
  }
}

function holePath(hole: Hole, x: number, y: number, half: { x: number; y: number }): string {
  switch (hole.shape) {
    case 'round':
      return ellipse(x, y, half.x);
    case 'slot':
      return slot(x, y, half);
    case 'hexagon':
      return polygon([
        [x + half.x, y],
        [x + half.x / 2, y + half.y],
        [x - half.x / 2, y + half.y],
        [x - half.x, y],
        [x - half.x / 2, y - half.y],
        [x + half.x / 2, y - half.y],
      ]);
    default:
      return rectangle(x - half.x, y - half.y, 2 * half.x, 2 * half.y);
  }
}

function slot(x: number, y: number, half: { x: number; y: number }): string {
  const straight = Math.max(half.y - half.x, 0);
  const arc = `a${half.x} ${half.x} 0 0 1`;
  return `M${x + half.x} ${y - straight}v${2 * straight}${arc} ${-2 * half.x} 0v${-2 * straight}${arc} ${2 * half.x} 0Z`;
}
