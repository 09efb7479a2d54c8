import type { Press } from '../press/press.js';
import type { ReadyRow } from '../row/readyRow.js';
import type { Shop } from '../shop/readShop.js';
import { describeHole } from '../tooling/hole.js';
import type { Operation } from './operations.js';

/** Tools and holders that a row has set up, each once. */
export interface ToolSets {
  toolChanges: number;
  holderChanges: number;
  holdersNotKnown: boolean;
}

export function toolSetsOf(
  operations: readonly Operation[],
  _row: ReadyRow,
  _press: Press,
  { unit }: Shop,
): ToolSets {
  const sets = new Set<string>();
  for (const each of operations) {
    if (each.is === 'punch') sets.add(`${describeHole(each.hole, unit)} ${each.thicknessMm}`);
    else if (each.is !== 'elsewhere' && each.is !== 'cut') sets.add(each.is);
  }
  return { toolChanges: sets.size, holderChanges: 0, holdersNotKnown: true };
}
