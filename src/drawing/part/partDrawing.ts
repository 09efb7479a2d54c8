import type { Finding } from '../../core/check/finding.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { RowJob } from '../../core/row/job/rowJob.js';
import { isSawn } from '../../core/section/section.js';
import type { Shop } from '../../core/shop/readShop.js';
import type { Drawing, Drawn } from '../drawing.js';
import { endViewOf } from './endView.js';
import { faceDrawing } from './faceDrawing.js';
import { factsOf } from './partFacts.js';
import { planOf } from './partPlan.js';
import { pointsOf } from './partPoints.js';
import { summaryOf } from './partWords.js';
import type { HoleSetting } from './settingMarks.js';

/*
 * The part of a row as it lies on the press: laid out by the same code as the check, with its holes and
 * works, its dimensions from stop and fence, and the distance that decides.
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
  /** The length as it is typed, with its unit. */
  length: string;
  /** The gauge settings that make its holes, told by numbers in circles. */
  settings?: readonly HoleSetting[];
  width?: number;
}

/** Whether a part is drawn without holes, other work or a distance that decides: no more than its length and width. */
export function isBare({ table, shapes }: Drawing): boolean {
  const [, ...work] = table.rows;
  return work.length === 0 && !shapes.some((shape) => shape.kind === 'text' && shape.behind === 'box');
}

/** From this width on the end view stands beside the part, else below it. */
const besideFrom = 420;
const gap = 12;
/** How much of the width a part may be high, so that it fills it. */
const heightShare = 0.6;
const [leastHeight, greatestHeight] = [120, 320];
const longShare = 0.2;

/** A part as it lies on the press: operator at the bottom, throat at the top, stop at the left; its left end at the left. */
export function partDrawing(input: PartInput): Drawn {
  const { job, deciding, unit, shop, mark = '', length, settings = [], width = 320 } = input;
  const { section } = job;
  if (!section) return { problem: 'There is no drawing: the section of this row could not be read.' };
  if (isSawn(section))
    return { problem: 'There is no drawing: tubes, tees and beams are not worked on a press.' };
  const plan = planOf(job, section, { unit, length, shop, deciding });
  const end = endViewOf(section, plan.face.id, unit);
  const room = end && width >= besideFrom ? width - end.width - gap : width;
  const face = faceDrawing({
    plan,
    unit,
    length,
    settings,
    width: room,
    height: Math.max(leastHeight, Math.min(room * heightShare, greatestHeight)),
    longHeight: room * longShare,
    turn: true,
  });
  return {
    title: `${mark === '' ? 'The part' : mark} on the press`,
    summary: summaryOf(plan, face.view, { unit, length }),
    width: face.width,
    height: face.height,
    shapes: face.shapes,
    notes: [...face.scale, ...face.beside],
    ...(end ? { end } : {}),
    points: pointsOf(plan, face.view, unit, settings),
    table: factsOf(plan, { unit, length }),
  };
}
