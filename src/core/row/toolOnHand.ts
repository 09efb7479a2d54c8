import type { Finding } from '../check/finding.js';
import type { ToolOver } from '../check/rowFact.js';
import type { Grade } from '../material/grade.js';
import { limitOf } from '../press/limit.js';
import type { Press } from '../press/press.js';
import { greatestClearance } from '../shop/greatestClearance.js';
import type { Shop } from '../shop/readShop.js';
import type { Tool } from '../shop/readTools.js';
import { setting } from '../shop/setting.js';
import { nameKey } from '../shop/table.js';
import { bodyFits } from '../tooling/bodyFits.js';
import { totalDieClearanceMm } from '../tooling/dieClearance.js';
import { dieSuits } from '../tooling/dieSuits.js';
import { describeHole, type Hole, leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';
import type { Working } from '../working/working.js';

const sameSizeMm = 0.1;

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
  if (!shop.tools) return withoutTools(press, hole, working);
  const { tools, problems } = shop.tools;
  const onHand = toolsOf(tools, press).filter(({ size }) => size.shape === hole.shape);
  const method = setting(shop, 'clearanceMethod');
  const clearanceMm = totalDieClearanceMm(
    { thicknessMm, method, grade, ...greatestClearance(shop) },
    working,
  );
  const punches = onHand.filter(({ kind }) => kind === 'punch');
  const dies = onHand.filter(({ kind }) => kind === 'die');
  const fits = punches
    .filter((tool) => sameSize(tool.size, hole))
    .map((tool) => bodyOf(tool, press, working));
  const punch = fits.find((fit) => fit === 'fits') ?? fits.find((fit) => fit === 'not known') ?? fits[0];
  const hasDie = dies.some((tool) => dieSuits({ die: tool.size, punch: hole, clearanceMm }));
  const lacking = punch === undefined || typeof punch === 'object' ? 'punch' : hasDie ? undefined : 'die';
  working?.step({
    title: 'Tool on hand',
    formula: 'a punch of the size; a die of hole + c / 2 to hole + 2 c',
    values: [
      { symbol: 'hole', meaning: 'hole', kind: 'text', value: describeHole(hole, shop.unit) },
      { symbol: 'c', meaning: 'total die clearance', kind: 'length', value: clearanceMm },
    ],
    result: {
      symbol: 'verdict',
      meaning: 'outcome of the check',
      kind: 'text',
      value: lacking ? 'No tool' : 'OK',
    },
    source: 'the Tools table of the shop; common practice, no source',
  });
  const about = { press: press.name } as const;
  if (lacking) {
    return [
      {
        rule: 'tool on hand',
        outcome: 'failed',
        verdict: 'No tool',
        ...about,
        lacking,
        hole,
        openingMm: leastDimensionMm(hole) + clearanceMm,
        nearest: nearest(lacking === 'punch' ? punches : dies, hole),
        unread: problems.length,
        ...(typeof punch === 'object' && lacking === 'punch' ? { over: punch } : {}),
      },
    ];
  }
  return punch === 'not known'
    ? [{ rule: 'tool body', outcome: 'open', verdict: 'Not checked', ...about, hole }]
    : [{ rule: 'tool body', outcome: 'held', verdict: 'OK', ...about, hole }];
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

const known = new WeakMap<readonly Tool[], Map<string, Tool[]>>();

/** The tools on hand that fit a press: looked up once for all rows of a list. */
function toolsOf(tools: readonly Tool[], { name }: Press): Tool[] {
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

/** A punch whose body is not stated is taken to fit; one with a body needs a press that says which bodies it takes. */
function bodyOf({ size, bodyMm }: Tool, press: Press, working?: Working): 'fits' | 'not known' | ToolOver {
  if (bodyMm === undefined) return 'fits';
  const station = limitOf(press, 'punchBody');
  const fit = bodyFits(
    { punch: size, bodyMm, ...(typeof station === 'number' ? { stationMm: station } : {}) },
    working,
  );
  if (fit.fits === 'yes') return 'fits';
  return fit.fits === 'not known' ? 'not known' : { why: fit.why, sizeMm: fit.sizeMm, limitMm: fit.limitMm };
}

function sameSize(tool: Hole, hole: Hole): boolean {
  const least = Math.abs(leastDimensionMm(tool) - leastDimensionMm(hole));
  const greatest = Math.abs(punchDiagonalMm(tool) - punchDiagonalMm(hole));
  return least <= sameSizeMm && greatest <= sameSizeMm;
}

function nearest(tools: readonly Tool[], hole: Hole) {
  const distance = (tool: Tool) => Math.abs(leastDimensionMm(tool.size) - leastDimensionMm(hole));
  return [...tools]
    .sort((a, b) => distance(a) - distance(b))
    .slice(0, 2)
    .map((tool) => (tool.written === undefined ? { size: tool.size } : { written: tool.written }));
}
