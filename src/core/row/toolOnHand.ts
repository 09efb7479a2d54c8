import type { Finding } from '../check/finding.js';
import type { Grade } from '../material/grade.js';
import type { ToolOver } from '../check/rowFact.js';
import { limitOf } from '../press/limit.js';
import { type Press, pressValue } from '../press/press.js';
import type { Shop } from '../shop/readShop.js';
import type { Tool } from '../shop/readTools.js';
import { bodyFits } from '../tooling/bodyFits.js';
import { type Hole, leastDimensionMm } from '../tooling/hole.js';
import { strokeLimits } from '../stroke/strokeLimits.js';
import type { Working } from '../working/working.js';
import { pickTools, type ToolPick } from './pickTools.js';

/**
 * Whether a punch of this shape and size whose body the press takes, and a die that suits it, are on hand for a press.
 * Source: common practice, no source.
 */
export function toolFindings(
  press: Press,
  hole: Hole,
  thicknessMm: number,
  grade: Grade,
  shop: Shop,
  working?: Working,
): Finding[] {
  const pick = pickTools(press, hole, thicknessMm, grade, shop, working);
  if (!pick) return withoutTools(press, hole, working);
  const open = pick.punch?.heightMm === undefined ? 0 : limitOf(press, 'punchOpenHeight');
  const unread = typeof open !== 'number' && open.rule === 'refusal' ? [open] : [];
  const over = heightOver(press, pick, thicknessMm, shop);
  return [pickFinding(press, hole, over ? { ...pick, body: over } : pick, shop), ...unread];
}

/**
 * A punch whose height is known, on a press whose open height is: it must stand over the work at the top of the stroke and
 * be in the die at its end.
 */
function heightOver(
  press: Press,
  { punch, die }: ToolPick,
  thicknessMm: number,
  shop: Shop,
): ToolOver | undefined {
  if (!die || punch?.heightMm === undefined || !isReadable(press)) return undefined;
  const limits = strokeLimits(
    press,
    { operation: 'punch', thicknessMm, punchHeightMm: punch.heightMm },
    shop,
  );
  if (limits.is !== 'out of travel') return undefined;
  return { why: limits.why, sizeMm: limits.givenMm, limitMm: limits.limitMm };
}

/** Cells that cannot be read are findings of their own. */
function isReadable(press: Press): boolean {
  const items = ['punch', 'punchStroke', 'punchWorkingGap', 'punchOpenHeight'] as const;
  return items.every((item) => pressValue(press, item).state !== 'bad');
}

/** Without a list of tools their bodies are not known; a punch that is larger itself than any body does not go in. */
function withoutTools(press: Press, hole: Hole, working?: Working): Finding[] {
  const station = limitOf(press, 'punchBody');
  if (typeof station !== 'number' || !Number.isFinite(station)) return [];
  const fit = bodyFits({ punch: hole, stationMm: station }, working);
  const about = { press: press.name, hole } as const;
  if (fit.fits !== 'no') {
    return [{ rule: 'tool body', outcome: 'open', verdict: 'Not checked', ...about, noTools: true }];
  }
  const { why, sizeMm, limitMm } = fit;
  const lacking = { rule: 'tool on hand', lacking: 'punch', nearest: [], unread: 0 } as const;
  return [{ ...lacking, outcome: 'failed', verdict: 'No tool', ...about, over: { why, sizeMm, limitMm } }];
}

/** What a row takes from the tools that are picked for its hole. */
export function pickFinding(
  { name: press }: Press,
  hole: Hole,
  { clearanceMm, punch, body, die, punches, dies }: ToolPick,
  { tools }: Shop,
): Finding {
  const isOver = typeof body === 'object';
  const lacking = punch === undefined || isOver ? 'punch' : die === undefined ? 'die' : undefined;
  if (lacking === undefined) {
    return body === 'not known'
      ? { rule: 'tool body', outcome: 'open', verdict: 'Not checked', press, hole }
      : { rule: 'tool body', outcome: 'held', verdict: 'OK', press, hole };
  }
  return {
    rule: 'tool on hand',
    outcome: 'failed',
    verdict: 'No tool',
    press,
    lacking,
    hole,
    openingMm: leastDimensionMm(hole) + clearanceMm,
    nearest: nearest(lacking === 'punch' ? punches : dies, hole),
    unread: tools?.problems.length ?? 0,
    ...(typeof body === 'object' ? { over: body } : {}),
  };
}

function nearest(tools: readonly Tool[], hole: Hole) {
  const distance = (tool: Tool) => Math.abs(leastDimensionMm(tool.size) - leastDimensionMm(hole));
  return [...tools]
    .sort((a, b) => distance(a) - distance(b))
    .slice(0, 2)
    .map((tool) => (tool.written === undefined ? { size: tool.size } : { written: tool.written }));
}
