import type { Grade } from '../material/grade.js';
import type { Finding } from '../press/finding.js';
import type { Press } from '../press/press.js';
import { formatLength } from '../quantity/formatLength.js';
import { greatestClearance } from '../shop/greatestClearance.js';
import type { Shop } from '../shop/readShop.js';
import type { Tool } from '../shop/readTools.js';
import { setting } from '../shop/setting.js';
import { nameKey } from '../shop/table.js';
import { totalDieClearanceMm } from '../tooling/dieClearance.js';
import { dieSuits } from '../tooling/dieSuits.js';
import type { Working } from '../working/working.js';
import { describeHole, type Hole, leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';

const sameSizeMm = 0.1;

/**
 * Whether a punch of this shape and size and a die that suits it are on hand for a press. Source: common practice, no
 * source.
 */
export function toolFindings(
  press: Press,
  hole: Hole,
  thicknessMm: number,
  grade: Grade,
  shop: Shop,
  working?: Working,
): Finding[] {
  if (!shop.tools) return [];
  const { tools, problems } = shop.tools;
  const onHand = tools.filter((tool) => tool.count > 0 && fitsPress(tool, press));
  const method = setting(shop, 'clearanceMethod');
  const clearanceMm = totalDieClearanceMm(
    { thicknessMm, method, grade, ...greatestClearance(shop) },
    working,
  );
  const punches = onHand.filter((tool) => tool.kind === 'punch' && tool.size.shape === hole.shape);
  const dies = onHand.filter((tool) => tool.kind === 'die' && tool.size.shape === hole.shape);
  const missing = !punches.some((tool) => sameSize(tool.size, hole))
    ? 'punch'
    : dies.some((tool) => dieSuits({ die: tool.size, punch: hole, clearanceMm }))
      ? undefined
      : 'die';
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
      value: missing ? 'No tool' : 'OK',
    },
    source: 'the Tools table of the shop; common practice, no source',
  });
  if (!missing) return [];
  const size = describeHole(hole, shop.unit);
  const unread = problems.length > 0 ? ` ${problems.length} rows of the Tools table could not be read.` : '';
  const opening = `opening ${formatLength(leastDimensionMm(hole) + clearanceMm, shop.unit)} ${shop.unit} is needed`;
  const note =
    missing === 'punch'
      ? `no punch ${size} for ${press.name}; ${nearest(punches, hole, shop)}.${unread}`
      : `no die for punch ${size} on ${press.name}: ${opening}; ${nearest(dies, hole, shop)}.${unread}`;
  return [{ verdict: 'No tool', governs: missing, note }];
}

function fitsPress(tool: Tool, press: Press): boolean {
  return tool.press === undefined || nameKey(tool.press) === nameKey(press.name);
}

function sameSize(tool: Hole, hole: Hole): boolean {
  const least = Math.abs(leastDimensionMm(tool) - leastDimensionMm(hole));
  const greatest = Math.abs(punchDiagonalMm(tool) - punchDiagonalMm(hole));
  return least <= sameSizeMm && greatest <= sameSizeMm;
}

function nearest(tools: readonly Tool[], hole: Hole, shop: Shop): string {
  const distance = (tool: Tool) => Math.abs(leastDimensionMm(tool.size) - leastDimensionMm(hole));
  const near = [...tools].sort((a, b) => distance(a) - distance(b)).slice(0, 2);
  if (near.length === 0) return 'none of that shape is on hand';
  return `nearest on hand: ${near.map((tool) => tool.written ?? describeHole(tool.size, shop.unit)).join(', ')}`;
}
