import type { Shape } from '../drawing.js';
import { polygon, segment } from '../path.js';
import type { Contour } from './contour.js';
import { polygonOf } from './crossing.js';
import { rightOf, type View, yOf } from './partView.js';

/** The fence a heavy bar, the stop a solid triangle where the part touches it, the operator at the bottom. */
export function pressShapes(view: View, contour: Contour, height: number): Shape[] {
  const stop = touchesStop(view, contour);
  const end = rightOf(view);
  const fence = view.top - 7;
  return [
    { kind: 'line', path: segment(view.left - 8, fence, end + 8, fence), line: 'heavy' },
    { kind: 'text', x: 2, y: fence - 2, text: 'fence' },
    {
      kind: 'area',
      path: polygon([
        [view.left - 4, stop],
        [view.left - 18, stop - 9],
        [view.left - 18, stop + 9],
      ]),
      fill: 'solid',
    },
    { kind: 'text', x: 2, y: stop + 22, text: 'stop' },
    { kind: 'text', x: (view.left + end) / 2, y: height - 8, text: 'operator', anchor: 'middle' },
  ];
}

/** The middle of what of the part lies nearest to the stop: its square end, or the point of a miter. */
function touchesStop(view: View, contour: Contour): number {
  const places = polygonOf(contour);
  const nearestMm = Math.min(...places.map(({ alongMm }) => alongMm));
  const near = places.filter(({ alongMm }) => alongMm - nearestMm < 0.01).map(({ acrossMm }) => acrossMm);
  const middle = yOf(view, (Math.min(...near) + Math.max(...near)) / 2);
  return Math.max(middle, view.top + 3);
}
