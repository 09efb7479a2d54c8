import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { type Band, rowHeight } from './band.js';
import { acrossDimension, alongDimension, aslantDimension, type DimensionText } from './dimensions.js';
import type { Distance } from './distances.js';
import type { DrawnGroup } from './drawnGroup.js';
import { freeLevel, type Obstacle } from './freeLevel.js';
import { halfSize } from './holeShapes.js';
import { piecesOf, roomsOf, type View, xOf, yOf } from './partView.js';

/** A distance across the part or aslant with its place along it, and its text in a band above or below. */
export interface AcrossLayout {
  distance: Distance;
  level: number;
  above: boolean;
  text: { x: number; row: number };
}

/** Places the distances across the part and their texts: those from the top edge above it, the rest below. */
export function acrossLayout(
  distances: readonly Distance[],
  groups: readonly DrawnGroup[],
  view: View,
  bands: { above: Band; below: Band },
): AcrossLayout[] {
  const obstacles: Obstacle[] = groups.flatMap(({ holes }) =>
    holes.flatMap((hole) => {
      const x = xOf(view, hole.center.x);
      return x === undefined ? [] : [{ x, half: halfSize(hole, view.pixelPerMm).x }];
    }),
  );
  return distances.flatMap((distance) => {
    const { direction, from, to } = distance;
    const [x, toX] = [xOf(view, from.x), xOf(view, to.x)];
    if (direction === 'along' || x === undefined || toX === undefined) return [];
    const level = direction === 'across' ? freeLevel(x, obstacles, piecesOf(view)) : (x + toX) / 2;
    obstacles.push({ x: level, half: 5 });
    const above = Math.max(from.y, to.y) >= view.widthMm - edgeMm;
    const text = bands[above ? 'above' : 'below'].place(level, distance.text);
    return [{ distance, level, above, text }];
  });
}

/** A distance that ends so near to the top edge is told above it. */
const edgeMm = 0.01;

/** The height a label's text stands at: rows go away from the part. */
export function rowY(view: View, { above, row }: { above: boolean; row: number }): number {
  const room = roomsOf(view.fence);
  return above
    ? view.top - room.above - row * rowHeight
    : view.top + view.widthMm * view.pixelPerMm + room.below + row * rowHeight;
}

export function acrossShapes(layout: readonly AcrossLayout[], view: View): Shape[] {
  return layout.flatMap(({ distance, level, above, text: { x, row } }) => {
    const { from, to, holes, governs, direction } = distance;
    const text: DimensionText = { text: distance.text, governs, x, y: rowY(view, { above, row }) };
    const start = xOf(view, from.x) ?? level;
    if (direction === 'aslant') {
      const toX = xOf(view, to.x) ?? level;
      return aslantDimension([start, yOf(view, from.y)], [toX, yOf(view, to.y)], text);
    }
    const at = (end: 'from' | 'to', yMm: number) => ({
      y: yOf(view, yMm),
      ...(holes.includes(end) ? { start } : {}),
    });
    return acrossDimension(at('from', from.y), at('to', to.y), level, text);
  });
}

const firstLevel = 18;
const levelHeight = 42;

/** The distances along the part, one below another. */
export function alongShapes(
  distances: readonly Distance[],
  view: View,
  { start, width }: { start: number; width: number },
): { shapes: Shape[]; bottom: number } {
  const shapes: Shape[] = [];
  let bottom = start;
  for (const { direction, from, to, text, governs } of distances) {
    const [left, right] = [xOf(view, from.x), xOf(view, to.x)];
    if (direction !== 'along' || left === undefined || right === undefined) continue;
    const level = bottom + (shapes.length === 0 ? firstLevel : levelHeight - 28);
    const half = labelWidth(text) / 2;
    const x = Math.max(half, Math.min((left + right) / 2, width - half));
    const at = yOf(view, from.y);
    shapes.push(
      ...alongDimension({ x: left, start: at }, { x: right, start: at }, level, {
        text,
        governs,
        x,
        y: level + 22,
      }),
    );
    bottom = level + 28;
  }
  return { shapes, bottom };
}
