import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import type { Band } from './band.js';
import { type Box, boxOf } from './box.js';
import type { DecidingDistance } from './decidingDistance.js';
import { acrossDimension, alongDimension, aslantDimension } from './dimensions.js';
import type { DrawnGroup } from './drawnGroup.js';
import { freeLevel, type Obstacle } from './freeLevel.js';
import { halfSize } from './holeShapes.js';
import { piecesOf, type View, xOf, yOf } from './partView.js';

/** The distance that decides with its place in the bands beside the part, before it is known how high these are. */
export interface DecidingLayout {
  shapes(
    view: View,
    baseline: (row: number) => number,
    bottom: number,
    width: number,
  ): { shapes: Shape[]; line: Box; bottom: number };
}

/** A distance that ends so near to the top edge is told above it. */
const edgeMm = 0.01;
const sameMm = 0.01;
/** Below the part, past the fence where it lies there: the first row of texts, and rows apart. */
const firstRow = { throat: 28, operator: 34 } as const;
const rowStep = 22;
const belowText = 14;
/** From the part to a distance along it, and on to its text. */
const alongLevel = { throat: 20, operator: 26 } as const;
const toText = 22;

/** Undefined where an end of it lies in what is left out of the drawing. */
export function decidingLayout(
  deciding: DecidingDistance,
  groups: readonly DrawnGroup[],
  view: View,
  { above, below }: { above: Band; below: Band },
): DecidingLayout | undefined {
  const { text } = deciding;
  const { from, to, open } = inOrder(deciding);
  const [start, end] = [xOf(view, from.x), xOf(view, to.x)];
  if (start === undefined || end === undefined) return undefined;
  const isAlong = Math.abs(from.y - to.y) < sameMm;
  const isAcross = !isAlong && Math.abs(from.x - to.x) < sameMm;
  if (isAlong)
    return {
      shapes(placed, _, bottom, width) {
        const y = yOf(placed, from.y);
        const level = bottom + alongLevel[placed.fence];
        const half = labelWidth(text) / 2;
        const x = Math.max(half, Math.min((start + end) / 2, width - half));
        const shown = { text, governs: true, x, y: level + toText };
        return {
          shapes: alongDimension({ x: start, start: y }, { x: end, start: y }, level, shown),
          line: boxOf([start, level], [end, level]),
          bottom: level + toText + belowText,
        };
      },
    };
  const level = isAcross ? freeLevel(start, obstaclesOf(groups, view), piecesOf(view)) : (start + end) / 2;
  const isAbove = Math.max(from.y, to.y) >= view.widthMm - edgeMm;
  const { x, row } = (isAbove ? above : below).place(level, text);
  return {
    shapes(placed, baseline, bottom) {
      const y = isAbove ? baseline(row) : bottom + firstRow[placed.fence] + row * rowStep;
      const shown = { text, governs: true, x, y };
      const at = (which: 'from' | 'to', yMm: number) => ({
        y: yOf(placed, yMm),
        ...(open.includes(which) ? { start } : {}),
      });
      const [fromY, toY] = [yOf(placed, from.y), yOf(placed, to.y)];
      return {
        shapes: isAcross
          ? acrossDimension(at('from', from.y), at('to', to.y), level, shown)
          : aslantDimension([start, fromY], [end, toY], shown),
        line: boxOf([isAcross ? level : start, fromY], [isAcross ? level : end, toY]),
        bottom: isAbove ? 0 : y + belowText,
      };
    },
  };
}

/** From the top down, or from left to right. */
function inOrder({ from, to, open }: DecidingDistance): Pick<DecidingDistance, 'from' | 'to' | 'open'> {
  const isAcross = Math.abs(from.x - to.x) < sameMm;
  if (isAcross ? from.y >= to.y : from.x <= to.x) return { from, to, open };
  return { from: to, to: from, open: open.map((end) => (end === 'from' ? 'to' : 'from')) };
}

function obstaclesOf(groups: readonly DrawnGroup[], view: View): Obstacle[] {
  return groups.flatMap(({ holes }) =>
    holes.flatMap((hole) => {
      const x = xOf(view, hole.center.x);
      return x === undefined ? [] : [{ x, half: halfSize(hole, view.pixelPerMm).x }];
    }),
  );
}
