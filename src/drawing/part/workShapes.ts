import type { PlacedBend } from '../../core/row/layout/bendLines.js';
import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { polyline, segment } from '../path.js';
import type { Band } from './band.js';
import { rowY } from './distanceShapes.js';
import { type DrawnMiter, miterText } from './miterWork.js';
import type { PartPlan } from './partPlan.js';
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
export function workLabels({ miters, bends }: PartPlan, view: View, below: Band): WorkLabel[] {
  const wanted = [
    ...miters.map(({ end, miterRad }) => {
      const text = `miter ${miterText(miterRad)}`;
      const half = labelWidth(text) / 2;
      return { text, x: end === 'left' ? view.left + half : rightOf(view) - half };
    }),
    ...acrossBends(bends, view),
  ];
  return wanted.map(({ text, x }) => ({ text, ...below.place(x, text) }));
}

function acrossBends(bends: readonly PlacedBend[], view: View): { text: string; x: number }[] {
  const across = bends.filter(({ runs }) => runs === 'across');
  const xs = across.flatMap(({ from }) => xOf(view, from.x) ?? []).sort((a, b) => a - b);
  const [first, second] = xs;
  if (first === undefined) return [];
  if (second !== undefined && second - first < labelRoom)
    return [{ text: `${across.length} bends`, x: first }];
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
export function bendShapes(bends: readonly PlacedBend[], view: View): Shape[] {
  const along = bends.filter(({ runs }) => runs === 'along');
  const [first] = along;
  const text = along.length === 1 ? 'bend' : `${along.length} bends`;
  return [
    ...bends.flatMap((bend) => (bend.runs === 'across' ? acrossLine(bend, view) : alongLines(bend, view))),
    ...(first
      ? [
          {
            kind: 'text',
            x: rightOf(view) + beyond + 2,
            y: yOf(view, first.atMm) + 4,
            text,
          } satisfies Shape,
        ]
      : []),
  ];
}

function acrossLine({ from, to }: PlacedBend, view: View): Shape[] {
  const x = xOf(view, from.x);
  const [top, bottom] = [yOf(view, Math.max(from.y, to.y)), yOf(view, Math.min(from.y, to.y))];
  if (x === undefined) return [];
  return [{ kind: 'line', path: segment(x, top - beyondFence, x, bottom + beyond), line: 'centre' }];
}

function alongLines({ atMm }: PlacedBend, view: View): Shape[] {
  const y = yOf(view, atMm);
  return piecesOf(view).map(({ from, to }) => ({
    kind: 'line',
    path: segment(from - beyond, y, to + beyond, y),
    line: 'centre',
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
