import type { Grade } from '../material/grade.js';
import type { Press } from '../press/press.js';
import { pickTools } from '../row/pickTools.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import type { Shop } from '../shop/readShop.js';
import { toolText } from '../shop/toolText.js';
import { formatLength } from '../quantity/formatLength.js';
import { greatestClearance } from '../shop/greatestClearance.js';
import { setting } from '../shop/setting.js';
import { totalDieClearanceMm } from '../tooling/dieClearance.js';
import { describeHole, type Hole } from '../tooling/hole.js';
import type { Operation, Punching } from './operations.js';

/** The punch and the die of one operation, as the shop writes them; what is undefined is not known. */
export interface ToolSet {
  punch?: string;
  die?: string;
  holder?: string;
  /** Length of the punch. */
  heightMm?: number;
}

/** Tools and holders that a row has set up, each once. */
export interface ToolSets {
  toolChanges: number;
  holderChanges: number;
  /** The shop has a list of tools, and a punch of the row has no holder there. */
  holdersNotKnown: boolean;
}

/** The tools picked for holes; where the shop keeps no list of tools, the sizes that they need. */
export function toolSetOf(
  { hole, thicknessMm }: Pick<Punching, 'hole' | 'thicknessMm'>,
  { grade }: ReadyRow,
  press: Press,
  shop: Shop,
): ToolSet {
  const pick = pickTools(press, hole, thicknessMm, grade, shop);
  if (!pick) return { punch: describeHole(hole, shop.unit), die: neededDie(hole, thicknessMm, grade, shop) };
  const { punch, die } = pick;
  const set: ToolSet = {};
  if (punch) set.punch = toolText(punch, shop.unit);
  if (die) set.die = toolText(die, shop.unit);
  if (punch?.holder !== undefined) set.holder = punch.holder;
  if (punch?.heightMm !== undefined) set.heightMm = punch.heightMm;
  return set;
}

/** The opening of a die by the clearance of the shop: `+ 1/32` of a hole of any shape. */
function neededDie(hole: Hole, thicknessMm: number, grade: Grade, shop: Shop): string {
  const method = setting(shop, 'clearanceMethod');
  const clearanceMm = totalDieClearanceMm({ thicknessMm, method, grade, ...greatestClearance(shop) });
  return `${describeHole(hole, shop.unit)} + ${formatLength(clearanceMm, shop.unit)}`;
}

/**
 * What a row has set up besides its gauges: the tools of each size of hole, of the notcher and of the bend, each once. A
 * die changed alone is a change, too.
 */
export function toolSetsOf(
  operations: readonly Operation[],
  row: ReadyRow,
  press: Press,
  shop: Shop,
): ToolSets {
  const sets = new Set<string>();
  const holders = new Set<string>();
  let holdersNotKnown = false;
  for (const each of operations) {
    if (each.is === 'punch') {
      const { punch, die, holder } = toolSetOf(each, row, press, shop);
      sets.add(JSON.stringify([punch ?? describeHole(each.hole, shop.unit), die ?? each.thicknessMm]));
      if (holder === undefined) holdersNotKnown ||= shop.tools !== undefined && punch !== undefined;
      else holders.add(holder);
    } else if (each.is === 'notch' || each.is === 'clip') sets.add('notcher');
    else if (each.is === 'bend') sets.add('bend');
  }
  return { toolChanges: sets.size, holderChanges: holders.size, holdersNotKnown };
}
