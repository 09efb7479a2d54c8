import type { PlacedBend } from '../../core/row/layout/bendLines.js';
import type { Shape } from '../drawing.js';
import { polyline, segment } from '../path.js';
import type { DrawnMiter } from './miterWork.js';
import { piecesOf, type View, xOf, yOf } from './partView.js';

const beyond = 6;
/** The fence bar is near. */
const beyondFence = 3;

/** Chain lines where the part is bent, a little beyond its edges. */
export function bendShapes(bends: readonly PlacedBend[], view: View): Shape[] {
  return bends.flatMap((bend) => (bend.runs === 'across' ? acrossLine(bend, view) : alongLines(bend, view)));
}

function acrossLine({ from, to }: PlacedBend, view: View): Shape[] {
  const x = xOf(view, from.x);
  const [top, bottom] = [yOf(view, Math.max(from.y, to.y)), yOf(view, Math.min(from.y, to.y))];
  if (x === undefined) return [];
  return [{ kind: 'line', path: segment(x, top - beyondFence, x, bottom + beyond), line: 'center' }];
}

function alongLines({ atMm }: PlacedBend, view: View): Shape[] {
  const y = yOf(view, atMm);
  return piecesOf(view).map(({ from, to }) => ({
    kind: 'line',
    path: segment(from - beyond, y, to + beyond, y),
    line: 'center',
  }));
}

/** At each miter the square end it is measured from, and an arc from there to the cut. */
export function miterShapes(miters: readonly DrawnMiter[], view: View): Shape[] {
  return miters.flatMap(({ end, miterRad, long, longX }): Shape[] => {
    const x = xOf(view, longX) ?? view.left;
    const [bottom, top] = [yOf(view, 0), yOf(view, view.widthMm)];
    const [corner, level] = long === 'bottom' ? [bottom, top] : [top, bottom];
    return [
      { kind: 'line', path: segment(x, corner, x, level), line: 'thin' },
      {
        kind: 'line',
        path: arc({ x, y: corner }, end, Math.sign(level - corner), miterRad, view),
        line: 'thin',
      },
    ];
  });
}

const arcSteps = 8;

function arc(
  corner: { x: number; y: number },
  end: DrawnMiter['end'],
  down: number,
  miterRad: number,
  view: View,
): string {
  const radius = 0.7 * view.widthMm * view.pixelPerMm;
  const inward = end === 'left' ? 1 : -1;
  return polyline(
    Array.from({ length: arcSteps + 1 }, (_, at): [number, number] => {
      const angle = (miterRad * at) / arcSteps;
      return [corner.x + inward * radius * Math.sin(angle), corner.y + down * radius * Math.cos(angle)];
    }),
  );
}
