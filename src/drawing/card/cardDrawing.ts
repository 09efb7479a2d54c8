import type { FaceId } from '../../core/part/part.js';
import { formatSizes } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/rowJob.js';
import type { Section } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Shape } from '../drawing.js';
import type { Side } from '../part/fence.js';
import { holeShapes } from '../part/holeShapes.js';
import { outlineShapes } from '../part/outline.js';
import { type PartPlan, planOf } from '../part/partPlan.js';
import { rightOf, type View, yOf } from '../part/partView.js';
import { pressShapes } from '../part/pressShapes.js';
import { bendShapes, miterShapes } from '../part/workShapes.js';
import { type Box, fenceBoxes, textBoxes } from '../part/box.js';
import { areApart, cardViewOf } from './cardView.js';
import { acrossShapes, acrossTheFence, alongShapes, alongTheStop, type Running } from './running.js';
import { type HoleSetting, markedHoles, settingMarks } from '../part/settingMarks.js';
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
  /** What has no room in the drawing, or is not to scale, in words. */
  said: string[];
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
    ...labelShapes(labels, (row) => top - aboveFor - row * rowHeight),
  ];
  const frame = { left: 0, top: 0, right: width, bottom: height };
  const marks = marksOf(input, plan, view, base, frame);
  return {
    width,
    height,
    shapes: textLast([...base, ...marks.shapes]),
    said: [
      ...scaleWords(view, unit),
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

/** More holes than these are not marked one by one. */
const mostMarks = 60;

function marksOf(
  { settings }: CardInput,
  plan: PartPlan,
  view: View,
  base: readonly Shape[],
  frame: Box,
): { shapes: Shape[]; said: string[] } {
  const marked = markedHoles(settings, plan, view);
  const away = 'The settings are told by their stop and fence; there is no room for their circles.';
  const columns = [...new Set(marked.map(({ x }) => x))];
  if (marked.length > mostMarks || (marked.length > 1 && !areApart(columns))) {
    return { shapes: [], said: [away] };
  }
  const { shapes, left: without } = settingMarks(marked, [...textBoxes(base), ...fenceBoxes(view)], frame);
  return without > 0 ? { shapes: [], said: [away] } : { shapes, said: [] };
}

function textLast(shapes: readonly Shape[]): Shape[] {
  const rank = (shape: Shape) => (shape.kind === 'text' ? 1 : 0);
  return [...shapes].sort((a, b) => rank(a) - rank(b));
}
