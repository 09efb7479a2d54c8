import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { polyline, segment } from '../path.js';
import type { Band } from './band.js';
import type { Bent } from './bends.js';
import { edgeAcrossMm, type End, endAlongMm, type Ends } from '../../../core/row/outline/contour.js';
import { rowY } from './distanceShapes.js';
import { mitersOf, miterText } from './miters.js';
import { piecesOf, rightOf, type View, xOf, yOf } from './partView.js';

/** A text below the part, in its row of the band. */
export interface WorkLabel {
  text: string;
  x: number;
  row: number;
}

const beyond = 6;
/** The fence bar is near. */
const beyondFence = 3;
/** Bends closer than this have one label for all. */
const labelRoom = 40;

/** The texts at miters and bends across the part. */
export function workLabels(ends: Ends, bent: Bent, view: View, below: Band): WorkLabel[] {
  const wanted = [
    ...mitersOf(ends).map(({ end, miterRad }) => {
      const text = `miter ${miterText(miterRad)}`;
      const half = labelWidth(text) / 2;
      return { text, x: end === 'stop' ? view.left + half : rightOf(view) - half };
    }),
    ...(bent.direction === 'across' ? acrossBends(bent, view) : []),
  ];
  return wanted.map(({ text, x }) => ({ text, ...below.place(x, text) }));
}

function acrossBends({ lines }: Bent, view: View): { text: string; x: number }[] {
  const xs = lines.flatMap(({ from }) => xOf(view, from.alongMm) ?? []);
  const [first, second] = xs;
  if (first === undefined) return [];
  if (second !== undefined && second - first < labelRoom)
    return [{ text: `${lines.length} bends`, x: first }];
  return xs.map((x) => ({ text: 'bend', x }));
}

export function labelShapes(labels: readonly WorkLabel[], view: View): Shape[] {
  return labels.map(({ text, x, row }) => ({
    kind: 'text',
    x,
    y: rowY(view, { above: false, row }),
    text,
    anchor: 'middle',
    behind: 'paper',
  }));
}

/** Chain lines where the part is bent, a little beyond its edges. */
export function bendShapes({ direction, lines }: Bent, view: View): Shape[] {
  const shapes = lines.flatMap(({ from, to }): Shape[] => {
    const [top, bottom] = [yOf(view, from.acrossMm), yOf(view, to.acrossMm)];
    if (direction === 'across') {
      const x = xOf(view, from.alongMm);
      return x === undefined
        ? []
        : [{ kind: 'line', path: segment(x, top - beyondFence, x, bottom + beyond), line: 'centre' }];
    }
    const [left, right] = [xOf(view, from.alongMm) ?? -Infinity, xOf(view, to.alongMm) ?? Infinity];
    return piecesOf(view).map((piece) => {
      const start = Math.max(left === -Infinity ? piece.from : left, piece.from);
      const end = Math.min(right, piece.to);
      return { kind: 'line', path: segment(start - beyond, top, end + beyond, top), line: 'centre' };
    });
  });
  const [first] = lines;
  if (direction === 'across' || !first) return shapes;
  const text = lines.length === 1 ? 'bend' : `${lines.length} bends`;
  return [
    ...shapes,
    { kind: 'text', x: rightOf(view) + beyond + 2, y: yOf(view, first.from.acrossMm) + 4, text },
  ];
}

/** At each miter the square end it is measured from, and an arc from there to the cut. */
export function miterShapes(ends: Ends, view: View): Shape[] {
  return mitersOf(ends).flatMap(({ end, miterRad }): Shape[] => {
    const longMm = edgeAcrossMm(ends, ends.long);
    const shortMm = edgeAcrossMm(ends, ends.long === 'throat' ? 'operator' : 'throat');
    const x = xOf(view, endAlongMm(ends, end, longMm)) ?? view.left;
    const [corner, level] = [yOf(view, longMm), yOf(view, shortMm)];
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

function arc(corner: { x: number; y: number }, end: End, down: number, miterRad: number, view: View): string {
  const radius = 0.7 * view.widthMm * view.pixelPerMm;
  const inward = end === 'stop' ? 1 : -1;
  return polyline(
    Array.from({ length: arcSteps + 1 }, (_, at): [number, number] => {
      const angle = (miterRad * at) / arcSteps;
      return [corner.x + inward * radius * Math.sin(angle), corner.y + down * radius * Math.cos(angle)];
    }),
  );
}
