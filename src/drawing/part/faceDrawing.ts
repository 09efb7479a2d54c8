import { formatSizes } from '../../core/quantity/formatLength.js';
import type { PlacedHole } from '../../core/part/part.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shape } from '../drawing.js';
import { labelWidth } from '../labelWidth.js';
import { Band } from './band.js';
import { type Box, boxOf, fenceBoxes, textBoxes } from './box.js';
import { decidingLayout } from './decidingShapes.js';
import type { DrawnGroup } from './drawnGroup.js';
import { areApart, faceViewOf } from './faceView.js';
import type { Side } from './fence.js';
import { halfSize, holeShapes } from './holeShapes.js';
import { outlineShapes } from './outline.js';
import type { PartPlan } from './partPlan.js';
import { pixelOf, rightOf, type View, xOf, yOf } from './partView.js';
import { pressShapes } from './pressShapes.js';
import { acrossShapes, acrossTheFence, alongShapes, alongTheStop, type Running } from './running.js';
import { type HoleSetting, markedHoles, settingMarks } from './settingMarks.js';
import { labelShapes, sizeLabels } from './sizeLabels.js';
import { bendShapes, miterShapes } from './workShapes.js';

/*
 * A face of a part as it lies on the press, for the pane and for cards: measured from the stop and from the fence,
 * hole sizes on the holes, the distance that decides boxed, the numbers of the gauge settings in circles.
 */

export interface FaceInput {
  plan: PartPlan;
  unit: LengthUnit;
  /** The length as it is typed. */
  length: string;
  settings: readonly HoleSetting[];
  width: number;
  /** Room for the width of the part, and for that of a long one. */
  height: number;
  longHeight?: number;
  /** Dimensions from the stop may stand upright where they have no room beside each other. */
  turn?: boolean;
}

export interface FaceDrawing {
  view: View;
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
/** From the part to the dimensions from the fence at its right. */
const toAcross = 28;
const rowHeight = 18;
/** A frame around a text needs more room. */
const boxedRowHeight = 22;
/** From the lowest label above to the part, and from the part to where lines turn to their labels below. */
const rooms: Record<Side, { above: number; below: number }> = {
  throat: { above: 28, below: 10 },
  operator: { above: 16, below: 18 },
};
/** The name of the fence or the stop at the left below the part, beside the texts there. */
const nameWidth = 56;
const operatorHeight = 18;
/** A part that is drawn less wide is hard to read. */
const leastHeight = 40;

export function faceDrawing(input: FaceInput): FaceDrawing {
  const { unit, width, height: tallest, longHeight, turn = false } = input;
  const plan = { ...input.plan, groups: input.plan.groups.map((group) => onFace(group, input.plan)) };
  const { deciding, fence } = plan;
  const part = { lengthMm: plan.drawnMm, widthMm: plan.face.widthMm, fence: fence.side };
  const kept = plan.lengthMm === undefined ? [] : plan.kept;
  const viewBeside = (right: number) =>
    faceViewOf(part, { left, top: 0, width: width - left - right, height: tallest }, kept, longHeight);
  const texts = acrossTheFence(plan, viewBeside(toAcross), unit).map(({ text }) => labelWidth(text));
  const flat = viewBeside(toAcross + Math.max(...texts));
  const [above, below] = [new Band(width), new Band(width, nameWidth)];
  const decided = deciding && decidingLayout(deciding, plan.groups, flat, { above, below });
  const labels = sizeLabels(plan, flat, unit, above);
  const step = deciding ? boxedRowHeight : rowHeight;
  const { above: aboveFor, below: belowFor } = rooms[fence.side];
  const head = fence.edge === 'edge' ? 0 : rowHeight;
  const top = head + above.count * step + aboveFor;
  const view = { ...flat, top };
  const bottom = yOf(view, 0);
  const drawn = decided?.shapes(view, (row) => top - aboveFor - row * step, bottom, width);
  const level = Math.max(bottom + belowFor, drawn?.bottom ?? 0);
  const along = alongTheStop(plan, view, unit, input.length);
  const across = acrossTheFence(plan, view, unit);
  const stop = alongShapes(along, { level, left, right: width, turn });
  const beside = acrossShapes(across, {
    level: rightOf(view) + 14,
    top: top - 20,
    bottom: bottom + (drawn ? 10 : 16),
  });
  const height = level + (stop?.height ?? 0) + operatorHeight;
  const base = [
    ...pressShapes(view, plan, { throat: rowHeight - 6, operator: height - 5 }),
    ...(view.alongPerMm === undefined ? miterShapes(plan.miters, view) : []),
    ...outlineShapes(view, plan),
    ...bendShapes(plan.bends, view),
    ...plan.groups.flatMap(({ holes, isRead }) =>
      holes.flatMap((hole) => holeShapes(hole, isRead(hole), view)),
    ),
    ...(stop?.shapes ?? []),
    ...(beside ?? []),
    ...labelShapes(labels, { top, baseline: (row) => top - aboveFor - row * step }),
    ...(drawn?.shapes ?? []),
  ];
  const frame = { left: 0, top: 0, right: width, bottom: height };
  const lines = [
    ...(stop ? along.map(({ at, start }) => boxOf([at, start], [at, level])) : []),
    ...(beside ? across.map(({ at, start }) => boxOf([start, at], [rightOf(view) + 14, at])) : []),
    ...(drawn ? [drawn.line] : []),
  ];
  const taken = [...textBoxes(base), ...fenceBoxes(view), ...edgeBoxes(plan, view), ...lines];
  const marks = marksOf(input.settings, plan, view, taken, frame);
  const used = Math.max(rightOf(view) + 10, ...textBoxes(base).map((box) => box.right));
  return {
    view,
    width: Math.min(width, used),
    height,
    shapes: textLast([...base, ...marks.shapes]),
    tight: bottom - top < leastHeight || areCrowded(plan, view),
    scale: scaleWords(view, unit),
    beside: [
      ...(stop ? [] : [`From the stop: ${listed(along)}.`]),
      ...(beside ? [] : [`From the ${fence.edge} at the fence: ${listed(across)}.`]),
      ...marks.said,
      ...offWords(input.plan, plan),
    ],
  };
}

/** A hole whose center lies beside the part has no place in the drawing; its row is refused, and says so. */
function onFace(group: DrawnGroup, { face, drawnMm }: PartPlan): DrawnGroup {
  const isOn = ({ center: { x, y } }: PlacedHole) => x >= 0 && x <= drawnMm && y >= 0 && y <= face.widthMm;
  return { ...group, holes: group.holes.filter(isOn) };
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

function offWords(given: PartPlan, drawn: PartPlan): string[] {
  const count = ({ groups }: PartPlan) => groups.reduce((sum, { holes }) => sum + holes.length, 0);
  const off = count(given) - count(drawn);
  if (off === 0) return [];
  return [off === 1 ? '1 hole lies beside the part.' : `${off} holes lie beside the part.`];
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
  settings: readonly HoleSetting[],
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

/** Text above all lines, the boxed one above other text. */
function textLast(shapes: readonly Shape[]): Shape[] {
  const rank = (shape: Shape) => (shape.kind === 'text' ? (shape.behind === 'box' ? 2 : 1) : 0);
  return [...shapes].sort((a, b) => rank(a) - rank(b));
}
