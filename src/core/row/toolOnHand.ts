import type { Grade } from '../material/grade.js';
import type { Finding } from '../press/finding.js';
import type { Press } from '../press/press.js';
import { formatLength } from '../quantity/formatLength.js';
import type { Shop } from '../shop/readShop.js';
import type { Tool } from '../shop/readTools.js';
import { setting } from '../shop/setting.js';
import { nameKey } from '../shop/table.js';
import { totalDieClearanceMm } from '../tooling/dieClearance.js';
import { describeHole, type Hole, leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';

const sameSizeMm = 0.1;

/**
 * Whether a punch of this shape and size and a die that suits it are on hand for a press. A die suits when
 * its opening leaves between half and twice the total clearance. Source: common practice, no source.
 */
export function toolFindings(
  press: Press,
  hole: Hole,
  thicknessMm: number,
  grade: Grade,
  shop: Shop,
): Finding[] {
  if (!shop.tools) return [];
  const fits = (tool: Tool) =>
    tool.count > 0 && (tool.press === undefined || nameKey(tool.press) === nameKey(press.name));
  const onHand = shop.tools.tools.filter(fits);
  const unread =
    shop.tools.problems.length > 0
      ? ` ${shop.tools.problems.length} rows of the Tools table could not be read.`
      : '';
  const size = describeHole(hole, shop.unit);
  const punches = onHand.filter((tool) => tool.kind === 'punch' && tool.size.shape === hole.shape);
  if (!punches.some((tool) => sameSize(tool.size, hole))) {
    const note = `no punch ${size} for ${press.name}; ${nearest(punches, hole, shop)}.${unread}`;
    return [{ verdict: 'No tool', governs: 'punch', note }];
  }
  const clearanceMm = totalDieClearanceMm({ thicknessMm, method: setting(shop, 'clearanceMethod'), grade });
  const dies = onHand.filter((tool) => tool.kind === 'die' && tool.size.shape === hole.shape);
  if (dies.some((tool) => suits(tool.size, hole, clearanceMm))) return [];
  const opening = formatLength(leastDimensionMm(hole) + clearanceMm, shop.unit);
  const note = `no die for punch ${size} on ${press.name}: opening ${opening} ${shop.unit} is needed; ${nearest(dies, hole, shop)}.${unread}`;
  return [{ verdict: 'No tool', governs: 'die', note }];
}

function sameSize(tool: Hole, hole: Hole): boolean {
  const least = Math.abs(leastDimensionMm(tool) - leastDimensionMm(hole));
  const greatest = Math.abs(punchDiagonalMm(tool) - punchDiagonalMm(hole));
  return least <= sameSizeMm && greatest <= sameSizeMm;
}

function suits(die: Hole, hole: Hole, clearanceMm: number): boolean {
  const gap = leastDimensionMm(die) - leastDimensionMm(hole);
  const gapAlong = punchDiagonalMm(die) - punchDiagonalMm(hole);
  const inRange = (each: number) =>
    each >= clearanceMm / 2 - sameSizeMm / 2 && each <= clearanceMm * 2 + sameSizeMm / 2;
  return inRange(gap) && (hole.shape !== 'slot' || inRange(gapAlong));
}

function nearest(tools: readonly Tool[], hole: Hole, shop: Shop): string {
  const distance = (tool: Tool) => Math.abs(leastDimensionMm(tool.size) - leastDimensionMm(hole));
  const near = [...tools].sort((a, b) => distance(a) - distance(b)).slice(0, 2);
  if (near.length === 0) return 'none of that shape is on hand';
  return `nearest on hand: ${near.map((tool) => describeHole(tool.size, shop.unit)).join(', ')}`;
}
