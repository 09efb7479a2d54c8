import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { type Band, rowHeight } from './band.js';
import { acrossDimension, alongDimension } from './dimensions.js';
import type { Distance } from './distances.js';
import { freeLevel, type Obstacle } from './freeLevel.js';
import { piecesOf, roomsOf, type View, xOf, yOf } from './partView.js';
import type { PlacedGroup } from './placedHoles.js';
import { halfSize } from './holeShapes.js';

/** A distance across the part with its place along it, and its text in a band above or below. */
export interface AcrossLayout {
  distance: Distance;
  level: number;
  above: boolean;
  text: { x: number; row: number };
}

/** Places the distances across the part and their texts: those from the edge at the throat above it, the rest below. */
export function acrossLayout(
  distances: readonly Distance[],
  groups: readonly PlacedGroup[],
  view: View,
  bands: { above: Band; below: Band },
): AcrossLayout[] {
  const obstacles: Obstacle[] = groups.flatMap(({ group, holes }) =>
    holes.flatMap(({ alongMm }) => {
      const x = xOf(view, alongMm);
      return x === undefined ? [] : [{ x, half: halfSize(group.hole, view.pixelPerMm).x }];
    }),
  );
  return distances.flatMap((distance) => {
    const x = xOf(view, distance.from.alongMm);
    if (distance.direction !== 'across' || x === undefined) return [];
    const level = freeLevel(x, obstacles, piecesOf(view));
    obstacles.push({ x: level, half: 5 });
    const above = distance.from.acrossMm === 0;
    const text = bands[above ? 'above' : 'below'].place(level, distance.text);
    return [{ distance, level, above, text }];
  });
}

/** The height a label's text stands at: rows go away from the part. */
export function rowY(view: View, { above, row }: { above: boolean; row: number }): number {
  const room = roomsOf(view.fence);
  return above
    ? view.top - room.above - row * rowHeight
    : yOf(view, view.widthMm) + room.below + row * rowHeight;
}

export function acrossShapes(layout: readonly AcrossLayout[], view: View): Shape[] {
  return layout.flatMap(({ distance, level, above, text }) => {
    const { from, to, holes, governs } = distance;
    const start = xOf(view, from.alongMm);
    const at = (end: 'from' | 'to', acrossMm: number) => ({
      y: yOf(view, acrossMm),
      ...(start !== undefined && holes.includes(end) ? { start } : {}),
    });
    const y = rowY(view, { above, row: text.row });
    return acrossDimension(at('from', from.acrossMm), at('to', to.acrossMm), level, {
      text: distance.text,
      governs,
      x: text.x,
      y,
    });
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
    const [left, right] = [xOf(view, from.alongMm), xOf(view, to.alongMm)];
    if (direction !== 'along' || left === undefined || right === undefined) continue;
    const level = bottom + (shapes.length === 0 ? firstLevel : levelHeight - 28);
    const half = labelWidth(text) / 2;
    const x = Math.max(half, Math.min((left + right) / 2, width - half));
    const at = yOf(view, from.acrossMm);
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
