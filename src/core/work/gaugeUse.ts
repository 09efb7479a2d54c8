import type { Press } from '../press/press.js';
import type { ReadyRow } from '../row/readyRow.js';
import type { Shop } from '../shop/readShop.js';
import type { Operation } from './operations.js';

/** What fence and stops take on a row. */
export interface GaugeUse {
  settings: number;
  /** Each time a piece is put to the gauges. */
  lifts: number;
  /** Holes a piece that are marked out by hand. */
  marked: number;
}

export function gaugeUse(
  operations: readonly Operation[],
  _row: ReadyRow,
  _press: Press,
  _shop: Shop,
): GaugeUse {
  const use = { settings: 0, lifts: 0, marked: 0 };
  for (const each of operations) {
    if (each.is !== 'punch') continue;
    use.lifts += 1;
    if (each.given) use.settings += each.holes.length;
    else use.marked += each.holes.length;
  }
  return use;
}
