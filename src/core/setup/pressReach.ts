import type { Range } from '../check/range.js';
import { limitOf } from '../press/limit.js';
import type { Press } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import type { GaugeReach } from './gaugeSetting.js';

/** The reach of the gauges of a press, and the items it could not be checked against. */
export interface PressReach {
  reach: GaugeReach;
  /** Blank, or cells that cannot be read: nothing was checked against them. */
  unknown: readonly PressItemKey[];
}

/**
 * How far fence and stops of a press go for a face of this width. The fence of plates and webs stands in the throat; a
 * heel lies at a fence before the punch, and what is beyond the punch goes into the throat.
 */
export function pressReach(press: Press, widthMm: number, heel: boolean): PressReach {
  const unknown: PressItemKey[] = [];
  const mm = (key: PressItemKey, free: number) => {
    const limit = limitOf(press, key);
    if (typeof limit !== 'number') unknown.push(key);
    return typeof limit !== 'number' || limit === Infinity ? free : limit;
  };
  const range = (least: PressItemKey, greatest: PressItemKey): Range => ({
    least: mm(least, 0),
    most: mm(greatest, Infinity),
  });
  const fence = range('fenceLeast', 'fenceGreatest');
  const throatMm = mm('punchThroat', Infinity);
  const reach: GaugeReach = {
    fence: heel
      ? { least: Math.max(fence.least, widthMm - throatMm), most: fence.most }
      : { least: fence.least, most: Math.min(fence.most, throatMm) },
    leftStop: range('leftStopLeast', 'leftStopGreatest'),
    rightStop: range('rightStopLeast', 'rightStopGreatest'),
  };
  return { reach, unknown };
}
