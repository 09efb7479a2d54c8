import type { Press } from '../press/press.js';
import { limitOf } from '../press/limit.js';
import type { Layouts } from '../row/layout/layoutOf.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import { type RowGauge, rowGauge } from '../setup/rowGauge.js';
import type { Shop } from '../shop/readShop.js';
import type { Operation, Punching } from './operations.js';
import { toolSetOf } from './toolSets.js';

/** What fence and stops take on a row. */
export interface GaugeUse {
  settings: number;
  /** Each time a piece is put to the gauges. */
  lifts: number;
  /** Holes a piece that are marked out by hand: out of reach, or in no given place. */
  marked: number;
  /** The press does not say how many stops stand at once: one was taken. */
  stopsNotKnown: boolean;
}

/** Holes that are punched with one punch, and their settings face by face. */
export interface PunchPass {
  punchings: readonly Punching[];
  gauges: readonly RowGauge[];
}

/** The holes of a row by the tools that punch them, in the order of the row. */
export function punchPasses(
  operations: readonly Operation[],
  { row, layouts }: { row: ReadyRow; layouts: Layouts },
  press: Press,
  shop: Shop,
): PunchPass[] {
  const byTool = new Map<string, Punching[]>();
  for (const each of operations) {
    if (each.is !== 'punch') continue;
    const { punch, die } = toolSetOf(each, row, press, shop);
    const key = JSON.stringify([punch ?? each.hole, die ?? each.thicknessMm]);
    byTool.set(key, [...(byTool.get(key) ?? []), each]);
  }
  return [...byTool.values()].map((punchings) => {
    const groups = punchings.map(({ group }) => group);
    return { punchings, gauges: rowGauge({ row, layouts, press, shop, groups }) };
  });
}

/**
 * How often fence and stop are set, and a piece lifted to them: once for each face, for each way round that it lies, and
 * for the settings beyond the stops that stand at once.
 */
export function gaugeUse(passes: readonly PunchPass[], press: Press): GaugeUse {
  const atOnce = limitOf(press, 'stopsAtOnce');
  const use = { settings: 0, lifts: 0, marked: 0 };
  let stopsNotKnown = false;
  for (const { settings, marked, notGiven } of passes.flatMap(({ gauges }) => gauges)) {
    const ways = new Set(settings.flatMap(({ hits }) => hits.map(({ turn }) => turn)));
    const standing = typeof atOnce === 'number' ? Math.max(1, atOnce) : 1;
    stopsNotKnown ||= typeof atOnce !== 'number' && settings.length > 1;
    use.settings += settings.length;
    use.lifts += Math.max(1, ways.size, Math.ceil(settings.length / standing));
    use.marked += marked.length + notGiven.length;
  }
  return { ...use, stopsNotKnown };
}
