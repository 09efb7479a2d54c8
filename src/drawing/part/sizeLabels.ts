import type { PlacedHole } from '../../core/part/part.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import { describeHole } from '../../core/tooling/hole.js';
import type { Shape } from '../drawing.js';
import { polyline } from '../path.js';
import type { Band } from './band.js';
import { halfSize } from './holeShapes.js';
import { miterText } from './miterWork.js';
import type { PartPlan } from './partPlan.js';
import { pixelOf, rightOf, type View, xOf, yOf } from './partView.js';

const sameMm = 0.01;

/** What a label above the part says, and what it points at, from the top of the part. */
interface Label {
  text: string;
  x: number;
  y?: number;
}

export interface PlacedLabel extends Label {
  middle: number;
  row: number;
}

/** The sizes of holes and works, each once with its count, in rows above the part: row 0 is next to it. */
export function sizeLabels(plan: PartPlan, view: View, unit: LengthUnit, band: Band): PlacedLabel[] {
  return [...holeLabels(plan, view, unit), ...workLabels(plan, view), ...miterLabels(plan, view)].map(
    (label) => {
      const { x: middle, row } = band.place(label.x, label.text);
      return { ...label, middle, row };
    },
  );
}

/** Each size once, with the count of all its holes; the line goes to the topmost, then the leftmost of them. */
function holeLabels({ groups }: PartPlan, view: View, unit: LengthUnit): Label[] {
  const sizes = new Map<string, PlacedHole[]>();
  for (const { group, holes, made } of groups) {
    const size = `${describeHole(group.hole, unit)}${made === '' ? '' : ` ${made}`}`;
    sizes.set(size, [...(sizes.get(size) ?? []), ...holes]);
  }
  return [...sizes].flatMap(([size, holes]) => {
    if (holes.length === 0) return [];
    const text = `${holes.length} × ${size}`;
    const [top] = holes
      .filter(({ center }) => xOf(view, center.x) !== undefined)
      .sort((a, b) => Math.round((b.center.y - a.center.y) / sameMm) || a.center.x - b.center.x);
    if (!top) return { text, x: view.left };
    const [x, y] = pixelOf(view, top.center);
    return { text, x, y: y - halfSize(top, view.pixelPerMm).y };
  });
}

function workLabels({ works }: PartPlan, view: View): Label[] {
  return works.flatMap(({ name: [name], words, marks }) => {
    if (name === 'miter') return [];
    const shown = marks.find(({ x }) => xOf(view, x) !== undefined);
    return words.map((text): Label => {
      if (!shown) return { text, x: view.left };
      const [x, y] = pixelOf(view, shown);
      return { text, x, y };
    });
  });
}

function miterLabels({ miters }: PartPlan, view: View): Label[] {
  return miters.map(({ end, miterRad, shortX, long }) => ({
    text: `miter ${miterText(miterRad)}`,
    x: end === 'left' ? view.left : rightOf(view),
    ...(long === 'bottom' ? { y: yOf(view, view.widthMm), x: xOf(view, shortX) ?? view.left } : {}),
  }));
}

const textHeight = 5;

/** The labels, each with a line to what it is about. */
export function labelShapes(
  labels: readonly PlacedLabel[],
  { top, baseline }: { top: number; baseline: (row: number) => number },
): Shape[] {
  return labels.flatMap(({ text, x, y, middle, row }): Shape[] => {
    const level = baseline(row);
    return [
      ...(y === undefined
        ? []
        : [
            {
              kind: 'line',
              path: polyline([
                [middle, level + textHeight],
                [x, top + y],
              ]),
              line: 'thin',
            } satisfies Shape,
          ]),
      { kind: 'text', x: middle, y: level, text, anchor: 'middle', strong: true, behind: 'paper' },
    ];
  });
}
