import type { Press } from '../press/press.js';
import { pickTools } from '../row/pickTools.js';
import type { ReadyRow } from '../row/readyRow.js';
import type { Shop } from '../shop/readShop.js';
import { toolText } from '../shop/toolText.js';
import { describeHole } from '../tooling/hole.js';
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

/** The tools picked for holes; none where the shop keeps no list of tools, or has none that fits. */
export function toolSetOf(punching: Punching, { grade }: ReadyRow, press: Press, shop: Shop): ToolSet {
  const { punch, die } = pickTools(press, punching.hole, punching.thicknessMm, grade, shop) ?? {};
  const set: ToolSet = {};
  if (punch) set.punch = toolText(punch, shop.unit);
  if (die) set.die = toolText(die, shop.unit);
  if (punch?.holder !== undefined) set.holder = punch.holder;
  if (punch?.heightMm !== undefined) set.heightMm = punch.heightMm;
  return set;
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
      if (holder === undefined) holdersNotKnown ||= punch !== undefined;
      else holders.add(holder);
    } else if (each.is === 'notch' || each.is === 'clip') sets.add('notcher');
    else if (each.is === 'bend') sets.add('bend');
  }
  return { toolChanges: sets.size, holderChanges: holders.size, holdersNotKnown };
}
