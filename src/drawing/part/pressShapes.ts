import type { Shape } from '../drawing.js';
import { polygon, segment } from '../path.js';
import type { PartPlan } from './partPlan.js';
import { rightOf, type View, yOf } from './partView.js';

/** From the edge of the part to the middle of the fence bar. */
const fenceAway = 7;
/** The bar and the stop come this near to each other, not nearer. */
const stopInside = 3;

/** The fence a heavy bar, the stop a solid triangle where the part touches it, the operator at the bottom. */
export function pressShapes(
  view: View,
  { face, fence: { edge } }: PartPlan,
  rows: { throat: number; operator: number },
): Shape[] {
  const stop = touchesStop(
    view,
    face.outline.edges.map(({ from }) => from),
  );
  const end = rightOf(view);
  const middle = (view.left + end) / 2;
  const heel = view.fence === 'operator';
  const fence = heel ? yOf(view, 0) + fenceAway : view.top - fenceAway;
  return [
    { kind: 'line', path: segment(view.left - 8, fence, end + 8, fence), line: 'heavy' },
    { kind: 'text', x: 2, y: fence + (heel ? 11 : -2), text: 'fence' },
    {
      kind: 'area',
      path: polygon([
        [view.left - 4, stop],
        [view.left - 18, stop - 9],
        [view.left - 18, stop + 9],
      ]),
      fill: 'solid',
    },
    { kind: 'text', x: 2, y: stop + (heel ? -12 : 22), text: 'stop' },
    ...(heel && edge !== 'edge'
      ? [{ kind: 'text', x: middle, y: rows.throat, text: 'toe, into the throat', anchor: 'middle' } as const]
      : []),
    { kind: 'text', x: middle, y: rows.operator, text: 'operator', anchor: 'middle' },
  ];
}

/** The middle of what of the part lies nearest to the stop: its square end, or the point of a miter. */
function touchesStop(view: View, corners: readonly { x: number; y: number }[]): number {
  const nearestMm = Math.min(...corners.map(({ x }) => x));
  const near = corners.filter(({ x }) => x - nearestMm < 0.01).map(({ y }) => y);
  const middle = yOf(view, (Math.min(...near) + Math.max(...near)) / 2);
  return Math.min(Math.max(middle, view.top + stopInside), yOf(view, 0) - stopInside);
}
