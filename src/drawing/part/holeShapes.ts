import type { PlacedHole } from '../../core/part/part.js';
import type { Shape } from '../drawing.js';
import { ellipse, polygon, segment, stadium } from '../path.js';
import { type View, xOf, yOf } from './partView.js';

const beyond = 5;
const leastRadius = 2.5;

/** A hole that lies in the ends shown, with its center lines; dashed where it is read, not given. */
export function holeShapes(hole: PlacedHole, read: boolean, view: View): Shape[] {
  const x = xOf(view, hole.center.x);
  if (x === undefined) return [];
  const y = yOf(view, hole.center.y);
  const half = halfSize(hole, view.pixelPerMm);
  return [
    {
      kind: 'area',
      path: holePath(hole, x, y, view.pixelPerMm),
      fill: 'paper',
      line: read ? 'hidden' : 'outline',
    },
    { kind: 'line', path: segment(x - half.x - beyond, y, x + half.x + beyond, y), line: 'center' },
    { kind: 'line', path: segment(x, y - half.y - beyond, x, y + half.y + beyond), line: 'center' },
  ];
}

/** How far a hole reaches from its center, in mm. */
export function halfMm({ shape, center }: PlacedHole): { x: number; y: number } {
  const most = (of: 'x' | 'y') => Math.max(...shape.core.map((point) => Math.abs(point[of] - center[of])));
  return { x: most('x') + shape.radius, y: most('y') + shape.radius };
}

/** How far a hole reaches from its center in the drawing. */
export function halfSize(hole: PlacedHole, pixelPerMm: number): { x: number; y: number } {
  const { x, y } = halfMm(hole);
  return { x: Math.max(x * pixelPerMm, leastRadius), y: Math.max(y * pixelPerMm, leastRadius) };
}

function holePath({ shape, center }: PlacedHole, x: number, y: number, pixelPerMm: number): string {
  const radius = Math.max(shape.radius * pixelPerMm, shape.core.length < 3 ? leastRadius : 0);
  const core = shape.core.map((point): [number, number] => [
    x + (point.x - center.x) * pixelPerMm,
    y - (point.y - center.y) * pixelPerMm,
  ]);
  const [first, second, ...others] = core;
  if (!first || !second) return ellipse(x, y, radius);
  return others.length > 0 ? polygon(core) : stadium(first, second, radius);
}
