import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { rightOf, type View, yOf } from './partView.js';

/** What takes room in a drawing, in pixels. */
export interface Box {
  left: number;
  top: number;
  right: number;
  bottom: number;
}

export function around(x: number, y: number, halfX: number, halfY = halfX): Box {
  return { left: x - halfX, right: x + halfX, top: y - halfY, bottom: y + halfY };
}

export function overlaps(a: Box, b: Box): boolean {
  return a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;
}

const aboveLine = 12;
const belowLine = 4;

/** The boxes of the texts among some shapes. */
export function textBoxes(shapes: readonly Shape[]): Box[] {
  return shapes.flatMap((shape) => {
    if (shape.kind !== 'text') return [];
    const { x, y, text, anchor = 'start', turned } = shape;
    const width = labelWidth(text);
    if (turned) {
      const top = anchor === 'end' ? y : anchor === 'middle' ? y - width / 2 : y - width;
      return [{ left: x - aboveLine, right: x + belowLine, top, bottom: top + width }];
    }
    const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
    return [{ left, right: left + width, top: y - aboveLine, bottom: y + belowLine }];
  });
}

/** The stop touches a leaning end somewhat above or below its middle. */
const stopHalf = 16;

/** The fence bar beside the part, and the stop at its left. */
export function fenceBoxes(view: View): Box[] {
  const [left, right] = [view.left - 20, rightOf(view) + 10];
  const bottom = yOf(view, 0);
  const stop = around(view.left - 11, (view.top + bottom) / 2, 9, stopHalf);
  return view.fence === 'throat'
    ? [stop, { left, right, top: view.top - 12, bottom: view.top + 1 }]
    : [stop, { left, right, top: bottom - 1, bottom: bottom + 12 }];
}

/** The room of a straight line. */
export function boxOf([x1, y1]: readonly [number, number], [x2, y2]: readonly [number, number]): Box {
  return {
    left: Math.min(x1, x2) - 1,
    right: Math.max(x1, x2) + 1,
    top: Math.min(y1, y2) - 1,
    bottom: Math.max(y1, y2) + 1,
  };
}
