import type { ToolOver } from '../check/rowFact.js';
import { limitOf } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { bestTool } from '../shop/bestTool.js';
import type { Tool } from '../shop/readTools.js';
import { nameKey } from '../shop/table.js';
import { bodyFits } from '../tooling/bodyFits.js';
import { type Hole, leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';
import type { Working } from '../working/working.js';

const sameSizeMm = 0.1;

/** A punch of the hole's size, and whether the press takes it. */
export interface PunchPick {
  punch: Tool;
  body: 'fits' | 'not known' | ToolOver;
}

/**
 * The punch that is picked for a hole: of those on hand of its shape and size one whose body the press takes, else one
 * of which that is not known; then the nearest in size.
 * @param press the press that the punch must fit
 * @param hole the hole, the same size as its punch
 * @param tools the tools of the shop
 * @param working collects the step when given
 * @returns the punch with what is known of its body; undefined where none of the size is on hand
 * Source: common practice, no source.
 */
export function pickPunch(
  press: Press,
  hole: Hole,
  tools: readonly Tool[],
  working?: Working,
): PunchPick | undefined {
  const sized = toolsOf(tools, press).filter(
    ({ kind, size }) => kind === 'punch' && offSizeMm(size, hole) <= sameSizeMm,
  );
  const punch = bestTool(sized, (tool) => [bodyRank(bodyOf(tool, press)), offSizeMm(tool.size, hole)]);
  return punch && { punch, body: bodyOf(punch, press, working) };
}

const known = new WeakMap<readonly Tool[], Map<string, Tool[]>>();

/** The tools on hand that fit a press: looked up once for all rows of a list. */
export function toolsOf(tools: readonly Tool[], { name }: Press): Tool[] {
  const byPress = known.get(tools) ?? new Map<string, Tool[]>();
  known.set(tools, byPress);
  const own =
    byPress.get(name) ??
    tools.filter(
      ({ count, press }) => count > 0 && (press === undefined || nameKey(press) === nameKey(name)),
    );
  byPress.set(name, own);
  return own;
}

function bodyRank(body: PunchPick['body']): number {
  return body === 'fits' ? 0 : body === 'not known' ? 1 : 2;
}

/** A punch whose body is not stated is taken to fit; one with a body needs a press that says which bodies it takes. */
function bodyOf({ size, bodyMm }: Tool, press: Press, working?: Working): PunchPick['body'] {
  if (bodyMm === undefined) return 'fits';
  const station = limitOf(press, 'punchBody');
  const fit = bodyFits(
    { punch: size, bodyMm, ...(typeof station === 'number' ? { stationMm: station } : {}) },
    working,
  );
  if (fit.fits === 'yes') return 'fits';
  return fit.fits === 'not known' ? 'not known' : { why: fit.why, sizeMm: fit.sizeMm, limitMm: fit.limitMm };
}

/** How far a tool is from the size of a hole; Infinity for another shape. */
function offSizeMm(tool: Hole, hole: Hole): number {
  if (tool.shape !== hole.shape) return Infinity;
  const least = Math.abs(leastDimensionMm(tool) - leastDimensionMm(hole));
  const greatest = Math.abs(punchDiagonalMm(tool) - punchDiagonalMm(hole));
  return Math.max(least, greatest);
}
