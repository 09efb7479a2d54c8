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
    const { x, y, text, anchor = 'start' } = shape;
    const width = labelWidth(text);
    const left = anchor === 'middle' ? x - width / 2 : anchor === 'end' ? x - width : x;
    return [{ left, right: left + width, top: y - aboveLine, bottom: y + belowLine }];
  });
}

/** The fence bar beside the part. */
export function fenceBoxes(view: View): Box[] {
  const [left, right] = [view.left - 20, rightOf(view) + 10];
  const bottom = yOf(view, 0);
  return view.fence === 'throat'
    ? [{ left, right, top: view.top - 12, bottom: view.top + 1 }]
    : [{ left, right, top: bottom - 1, bottom: bottom + 12 }];
}
