import type { Finding } from '../../core/check/finding.js';
import { formatLength } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import { isSawn } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Drawn, Shape } from '../drawing.js';
import { Band } from './band.js';
import { fenceBoxes, textBoxes } from './box.js';
import { acrossLayout, acrossShapes, alongShapes } from './distanceShapes.js';
import { wantedDistances } from './distances.js';
import { holeShapes } from './holeShapes.js';
import { outlineShapes } from './outline.js';
import { factsOf } from './partFacts.js';
import { type PartPlan, planOf } from './partPlan.js';
import { pointsOf } from './partPoints.js';
import { roomsOf, type View, viewOf, yOf } from './partView.js';
import { summaryOf } from './partWords.js';
import { pressShapes } from './pressShapes.js';
import { type HoleSetting, type MarkedHole, markedHoles, settingMarks } from './settingMarks.js';
import { bendShapes, labelShapes, miterShapes, workLabels } from './workShapes.js';

/*
 * The part of a row as it lies on the press: laid out by the same code as the check, with its holes and
 * works, the dimensions of the row, and the distance that decides.
 */

export interface PartInput {
  job: RowJob;
  /** The finding that decides the checked row. */
  deciding?: Finding | undefined;
  unit: LengthUnit;
  /** Says which holes its job specification lets be punched. */
  shop?: Shop;
  /** The mark of the row. */
  mark?: string;
  /** All distances the row gives, not only the one that decides. */
  all?: boolean;
  /** The gauge settings that make its holes, told by numbers in circles. */
  settings?: readonly HoleSetting[];
  width?: number;
}

const left = 46;
const right = 36;
const breakNoteHeight = 20;
const operatorHeight = 26;
/** The name of the fence below the part, beside the texts there. */
const fenceNameWidth = 44;

/** A part as it lies on the press: operator at the bottom, throat at the top, stop at the left; its left end at the left. */
export function partDrawing(input: PartInput): Drawn {
  const { job, deciding, unit, shop, mark = '', all = false, settings = [], width = 320 } = input;
  const { section } = job;
  if (!section) return { problem: 'There is no drawing: the section of this row could not be read.' };
  if (isSawn(section))
    return { problem: 'There is no drawing: tubes, tees and beams are not worked on a press.' };
  const plan = planOf(job, section, { unit, shop, deciding });
  const drawn = drawnPlan(plan, { deciding: plan.deciding, all, unit, width });
  const { view, height } = drawn;
  const { shapes, hasRoom } = marksOf(markedHoles(settings, plan, view), drawn, width);
  const summary = summaryOf(plan, view, unit);
  return {
    title: `${mark === '' ? 'The part' : mark} on the press`,
    summary: hasRoom ? summary : `${summary} The circles of the settings have no room here.`,
    width,
    height,
    shapes: textLast([...drawn.shapes, ...shapes]),
    points: pointsOf(plan, view, unit, settings),
    table: factsOf(plan, unit),
  };
}

type Wanted = Parameters<typeof wantedDistances>[2];

/** The labels are placed first, along the part: they say how much room there must be above and below it. */
function drawnPlan(
  plan: PartPlan,
  wanted: Wanted & { width: number },
): { view: View; height: number; shapes: Shape[] } {
  const { fence, face, drawnMm, groups, bends, miters } = plan;
  const { width, unit } = wanted;
  const heel = fence.side === 'operator';
  const [above, below] = [new Band(width), new Band(width, heel ? fenceNameWidth : 0)];
  const part = { lengthMm: drawnMm, widthMm: face.widthMm, fence: fence.side };
  const flat = viewOf(part, { left, top: 0, width: width - left - right }, plan.kept);
  const distances = wantedDistances(groups, { lengthMm: plan.lengthMm, widthMm: face.widthMm }, wanted);
  const across = acrossLayout(distances, groups, flat, { above, below });
  const labels = workLabels(plan, flat, below);
  const { head, foot } = roomsOf(fence.side);
  const noteHeight = flat.broken ? breakNoteHeight : 0;
  const view = { ...flat, top: head + above.height + noteHeight };
  const along = alongShapes(distances, view, { start: yOf(view, 0) + foot + below.height, width });
  const height = along.bottom + operatorHeight;
  const shapes = [
    ...pressShapes(view, plan, { throat: noteHeight + 14, operator: height - 8 }),
    ...miterShapes(miters, view),
    ...outlineShapes(view, plan),
    ...bendShapes(bends, view),
    ...groups.flatMap(({ holes, isRead }) => holes.flatMap((hole) => holeShapes(hole, isRead(hole), view))),
    ...acrossShapes(across, view),
    ...along.shapes,
    ...labelShapes(labels, view),
    ...breakNote(view, unit),
  ];
  return { view, height, shapes };
}

/** More holes than these are not marked one by one. */
const mostMarks = 60;

/** The circles of the settings, beside all that is drawn; all of them or none. */
function marksOf(
  marked: readonly MarkedHole[],
  { view, height, shapes: drawn }: { view: View; height: number; shapes: readonly Shape[] },
  width: number,
): { shapes: Shape[]; hasRoom: boolean } {
  if (marked.length > mostMarks) return { shapes: [], hasRoom: false };
  const frame = { left: 0, top: 0, right: width, bottom: height };
  const { shapes, left: without } = settingMarks(marked, [...textBoxes(drawn), ...fenceBoxes(view)], frame);
  return without > 0 ? { shapes: [], hasRoom: false } : { shapes, hasRoom: true };
}

/** Text above all lines, the boxed one above other text. */
function textLast(shapes: readonly Shape[]): Shape[] {
  const rank = (shape: Shape) => (shape.kind === 'text' ? (shape.behind === 'box' ? 2 : 1) : 0);
  return [...shapes].sort((a, b) => rank(a) - rank(b));
}

function breakNote(view: View, unit: LengthUnit): Shape[] {
  if (!view.broken) return [];
  const outMm = view.lengthMm - 2 * view.broken.endMm;
  return [
    { kind: 'text', x: 2, y: 14, text: `ends to scale, ${formatLength(outMm, unit)} ${unit} left out` },
  ];
}
