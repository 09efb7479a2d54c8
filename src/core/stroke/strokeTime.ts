import type { PressFinding } from '../check/finding.js';
import { limitOf, pressSource } from '../press/limit.js';
import { type Press, pressValue } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import { refuseBadCell } from '../press/refuseBadCell.js';
import type { Shop } from '../shop/readShop.js';
import type { NamedValue, Working } from '../working/working.js';
import { lengthValue } from '../working/namedValue.js';
import { type StrokeLimits, strokeLimits } from './strokeLimits.js';
import { isShear, type StrokeJob } from './strokeJob.js';

export type StrokeTime =
  | { is: 'timed'; seconds: number; by: 'speeds' | 'strokes per minute' }
  /** The press does not say what is needed: these items, all of them. */
  | { is: 'lacking'; items: readonly PressItemKey[] }
  /** There is no stroke to time. */
  | Exclude<StrokeLimits, { is: 'stops' }>;

const speedItems = ['approachSpeed', 'pressSpeed', 'returnSpeed'] as const;
const rateItems = ['strokesPerMinute', 'strokesPerMinuteTravel'] as const;
const secondsPerMinute = 60;

/**
 * The time of one stroke between its stops.
 *
 * Formula: T = a / va + p / vp + (a + p) / vr, a from the upper stop to the work, p from there to the lower stop; where
 *   the speeds are not known T = 60 / n · (a + p) / s, n strokes a minute at a travel of s. At a shear a + p is its full
 *   stroke and all of it below the top of the work counts as p: the time is never too short.
 * @param press the press with its speeds in mm/s, or strokes a minute and their travel in mm
 * @param job operation and thickness in mm
 * @param shop the shop, for the stops
 * @param working collects the steps when given
 * @returns seconds; or the items of the press that are lacking, never a number in their place
 * Valid as `strokeLimits`; throws as it does.
 * Source: common practice, no source.
 */
export function strokeTime(press: Press, job: StrokeJob, shop: Shop, working?: Working): StrokeTime {
  const limits = strokeLimits(press, job, shop, working);
  if (limits.is !== 'stops') return limits;
  const path = pathOf(press, job, limits);
  const [speeds, rate] = [valuesOf(press, speedItems), valuesOf(press, rateItems)];
  // The speeds say more; strokes per minute count where they are given and the speeds are not.
  const isRate = rate.lacking.length === 0 || (isBegun(rate) && !isBegun(speeds));
  const used = speeds.lacking.length > 0 && isRate ? rate : speeds;
  if (!path) return { is: 'lacking', items: ['shearStroke', ...used.lacking] };
  if (used.lacking.length > 0) return { is: 'lacking', items: used.lacking };
  const { approachMm, pressMm } = path;
  const [first = 0, second = 0, third = 0] = used.values;
  const travelMm = approachMm + pressMm;
  const seconds =
    used === speeds
      ? approachMm / first + pressMm / second + travelMm / third
      : (secondsPerMinute / first) * (travelMm / second);
  const formula = used === speeds ? 'T = a / va + p / vp + (a + p) / vr' : 'T = 60 / n · (a + p) / s';
  timeStep(path, seconds, formula, used.named, working);
  return { is: 'timed', seconds, by: used === speeds ? 'speeds' : 'strokes per minute' };
}

function isBegun({ named }: Values): boolean {
  return named.length > 0;
}

interface Path {
  approachMm: number;
  pressMm: number;
}

/** The way down; undefined where the stroke of a shear is not known. */
function pathOf(
  press: Press,
  { operation, thicknessMm }: StrokeJob,
  { upperMm, lowerMm = 0 }: { upperMm: number; lowerMm?: number },
): Path | undefined {
  const approachMm = upperMm - thicknessMm;
  if (!isShear(operation)) return { approachMm, pressMm: thicknessMm - lowerMm };
  const strokeMm = limitOf(press, 'shearStroke');
  if (typeof strokeMm !== 'number' || strokeMm === Infinity) return undefined;
  const openedMm = Math.min(approachMm, strokeMm - thicknessMm);
  return { approachMm: openedMm, pressMm: strokeMm - openedMm };
}

interface Values {
  values: readonly number[];
  named: readonly NamedValue[];
  lacking: readonly PressItemKey[];
}

const symbols = {
  approachSpeed: ['va', 'approach speed', 'speed'],
  pressSpeed: ['vp', 'press speed', 'speed'],
  returnSpeed: ['vr', 'return speed', 'speed'],
  strokesPerMinute: ['n', 'strokes per minute', 'count'],
  strokesPerMinuteTravel: ['s', 'travel of these strokes', 'length'],
} as const;

function valuesOf(press: Press, keys: readonly (keyof typeof symbols)[]): Values {
  const read = keys.map((key) => {
    const value = pressValue(press, key);
    if (value.state === 'bad') refuseBadCell(limitOf(press, key) as PressFinding);
    return { key, value: value.state === 'value' && value.value > 0 ? value.value : undefined };
  });
  return {
    values: read.flatMap(({ value }) => value ?? []),
    named: read.flatMap(({ key, value }) => {
      const [symbol, meaning, kind] = symbols[key];
      return value === undefined ? [] : [{ symbol, meaning, kind, value }];
    }),
    lacking: read.flatMap(({ key, value }) => (value === undefined ? [key] : [])),
  };
}

function timeStep(
  { approachMm, pressMm }: Path,
  seconds: number,
  formula: string,
  named: readonly NamedValue[],
  working?: Working,
): void {
  working?.step({
    title: 'Time of a stroke',
    formula,
    values: [
      lengthValue('a', 'from the upper stop to the work', approachMm),
      lengthValue('p', 'from there to the lower stop', pressMm),
      ...named,
    ],
    result: { symbol: 'T', meaning: 'time of one stroke', kind: 'seconds', value: seconds },
    source: pressSource,
    cautions: ['A short stroke saves time. It is never a guard.'],
  });
}
