import type { FaceId } from '../../core/part/part.js';
import { formatSizes } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import type { Section } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Shape } from '../drawing.js';
import type { Side } from '../part/fence.js';
import { halfSize, holeShapes } from '../part/holeShapes.js';
import { type Box, fenceBoxes, textBoxes } from '../part/box.js';
import { outlineShapes } from '../part/outline.js';
import { type PartPlan, planOf } from '../part/partPlan.js';
import { pixelOf, rightOf, type View, xOf, yOf } from '../part/partView.js';
import { pressShapes } from '../part/pressShapes.js';
import { type HoleSetting, markedHoles, settingMarks } from '../part/settingMarks.js';
import { bendShapes, miterShapes } from '../part/workShapes.js';
import { areApart, cardViewOf } from './cardView.js';
import { acrossShapes, acrossTheFence, alongShapes, alongTheStop, type Running } from './running.js';
import { labelShapes, sizeLabels } from './sizeLabels.js';

/*
 * A face of a part as its card has it: as it lies on the press, measured from the stop and from the fence, the
 * numbers of the gauge settings in circles.
 */

export interface CardInput {
  job: RowJob;
  section: Section;
  /** The face to draw; the first of the part where not given. */
  face?: FaceId | undefined;
  unit: LengthUnit;
  shop: Shop;
  /** The length as it is typed. */
  length: string;
  settings: readonly HoleSetting[];
  width: number;
  /** Room for the width of the part. */
  height: number;
}

export interface CardDrawing {
  width: number;
  height: number;
  shapes: Shape[];
  /** The part is drawn narrow, or its holes over each other: more room would help. */
  tight: boolean;
  /** How it is not to scale, in words. */
  scale: string[];
  /** What has no room in it, in words. */
  beside: string[];
}

const left = 46;
const right = 84;
const rowHeight = 18;
/** From the lowest label above to the part, and from the part to where lines turn to their labels below. */
const rooms: Record<Side, { above: number; below: number }> = {
  throat: { above: 28, below: 10 },
  operator: { above: 16, below: 18 },
};
const operatorHeight = 18;
/** A part that is drawn less wide is hard to read. */
const leastHeight = 40;

export function cardDrawing(input: CardInput): CardDrawing {
  const { job, section, face, unit, shop, width, height: tallest } = input;
  const plan = planOf(job, section, { unit, shop, face });
  const part = { lengthMm: plan.drawnMm, widthMm: plan.face.widthMm, fence: plan.fence.side };
  const kept = plan.lengthMm === undefined ? [] : plan.kept;
  const flat = cardViewOf(part, { left, top: 0, width: width - left - right, height: tallest }, kept);
  const { labels, height: labelHeight } = sizeLabels(plan, flat, unit, width);
  const { above: aboveFor, below: belowFor } = rooms[plan.fence.side];
  const head = plan.fence.edge === 'edge' ? 0 : rowHeight;
  const labelRows = labelHeight > 0 ? Math.max(...labels.map(({ row }) => row)) + 1 : 0;
  const top = head + labelRows * rowHeight + aboveFor;
  const view = { ...flat, top };
  const bottom = yOf(view, 0);
  const along = alongTheStop(plan, view, unit, input.length);
  const across = acrossTheFence(plan, view, unit);
  const below = alongShapes(along, { level: bottom + belowFor, left, right: width });
  const beside = acrossShapes(across, { level: rightOf(view) + 14, top: top - 8, bottom: bottom + 8 });
  const height = bottom + belowFor + (below ? 30 : 0) + operatorHeight;
  const base = [
    ...pressShapes(view, plan, { throat: rowHeight - 6, operator: height - 5 }),
    ...(view.alongPerMm === undefined ? miterShapes(plan.miters, view) : []),
    ...outlineShapes(view, plan),
    ...bendShapes(plan.bends, view).filter(({ kind }) => kind !== 'text'),
    ...plan.groups.flatMap(({ holes, isRead }) =>
      holes.flatMap((hole) => holeShapes(hole, isRead(hole), view)),
    ),
    ...(below ?? []),
    ...(beside ?? []),
    ...labelShapes(labels, { top, baseline: (row) => top - aboveFor - row * rowHeight }),
  ];
  const frame = { left: 0, top: 0, right: width, bottom: height };
  const lines = [
    ...(below ? along.map(({ at, start }) => boxOf([at, start], [at, bottom + belowFor])) : []),
    ...(beside ? across.map(({ at, start }) => boxOf([start, at], [rightOf(view) + 14, at])) : []),
  ];
  const taken = [...textBoxes(base), ...fenceBoxes(view), ...edgeBoxes(plan, view), ...lines];
  const marks = marksOf(input, plan, view, taken, frame);
  const used = Math.max(rightOf(view) + 10, ...textBoxes(base).map((box) => box.right));
  return {
    width: Math.min(width, used),
    height,
    shapes: textLast([...base, ...marks.shapes]),
    tight: bottom - top < leastHeight || areCrowded(plan, view),
    scale: scaleWords(view, unit),
    beside: [
      ...(below ? [] : [`From the stop: ${listed(along)}.`]),
      ...(beside ? [] : [`From the ${plan.fence.edge} at the fence: ${listed(across)}.`]),
      ...marks.said,
    ],
  };
}

function listed(running: readonly Running[]): string {
  return running.map(({ text }) => text).join(', ');
}

function scaleWords(view: View, unit: LengthUnit): string[] {
  if (view.alongPerMm !== undefined && view.alongPerMm < view.pixelPerMm) return ['Length not to scale.'];
  if (!view.broken) return [];
  const outMm = view.lengthMm - 2 * view.broken.endMm;
  const out = formatSizes([outMm], unit);
  return [`Ends to scale, ${out.endsWith('mm') ? out : `${out} ${unit}`} left out.`];
}

/** Holes of a line that touch each other in the drawing. */
function areCrowded({ groups }: PartPlan, view: View): boolean {
  const spans = groups
    .flatMap(({ holes }) => holes)
    .flatMap((hole) => {
      const x = xOf(view, hole.center.x);
      return x === undefined ? [] : [{ x, y: hole.center.y, half: halfSize(hole, view.pixelPerMm).x }];
    })
    .sort((a, b) => a.y - b.y || a.x - b.x);
  return spans.some((each, at) => {
    const next = spans[at + 1];
    return next?.y === each.y && next.x - each.x < next.half + each.half + 2;
  });
}

/** More holes than these are not marked one by one. */
const mostMarks = 60;

function marksOf(
  { settings }: CardInput,
  plan: PartPlan,
  view: View,
  taken: readonly Box[],
  frame: Box,
): { shapes: Shape[]; said: string[] } {
  const marked = markedHoles(settings, plan, view);
  const away = 'The settings are told by their stop and fence; there is no room for their circles.';
  const columns = [...new Set(marked.map(({ x }) => x))];
  if (marked.length > mostMarks || (marked.length > 1 && !areApart(columns))) {
    return { shapes: [], said: [away] };
  }
  const { shapes, left: without } = settingMarks(marked, taken, frame);
  return without > 0 ? { shapes: [], said: [away] } : { shapes, said: [] };
}

/** The straight edges of the part. */
function edgeBoxes({ face }: PartPlan, view: View): Box[] {
  return face.outline.edges.flatMap(({ from, to }) => {
    const [a, b] = [pixelOf(view, from), pixelOf(view, to)];
    const isStraight = Math.abs(a[0] - b[0]) < 1 || Math.abs(a[1] - b[1]) < 1;
    return isStraight ? [boxOf(a, b)] : [];
  });
}

function boxOf([x1, y1]: [number, number], [x2, y2]: [number, number]): Box {
  return {
    left: Math.min(x1, x2) - 1,
    right: Math.max(x1, x2) + 1,
    top: Math.min(y1, y2) - 1,
    bottom: Math.max(y1, y2) + 1,
  };
}

function textLast(shapes: readonly Shape[]): Shape[] {
  const rank = (shape: Shape) => (shape.kind === 'text' ? 1 : 0);
  return [...shapes].sort((a, b) => rank(a) - rank(b));
}
