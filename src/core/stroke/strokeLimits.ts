import { atMost } from '../atMost.js';
import type { PressFinding } from '../check/finding.js';
import { limitOf, valueOr, withinLimit } from '../press/limit.js';
import type { Press } from '../press/press.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import { usualWorkingGapMm } from '../press/punchStation.js';
import { refuseBadCell } from '../press/refuseBadCell.js';
import { stationOf } from '../press/stationOf.js';
import { requirePositive } from '../requireRange.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { ramTravel, type RamTravel } from './ramTravel.js';
import { isShear, stationOfStroke, type StrokeJob } from './strokeJob.js';

/** Where the stops stand, measured from the top of the die: above it positive, below it negative. */
export interface StopsOfStroke {
  is: 'stops';
  upperMm: number;
  /** Undefined at a shear: the full stroke. */
  lowerMm?: number;
  /** Of the punch: the underside of the stripper over the die. */
  stripperMm?: number;
  /** Of the punch, where its height and the press are known. */
  travel?: RamTravel;
  /** What could not be checked against the stops, since the press does not say it. */
  notChecked: readonly PressItemKey[];
}

export type StrokeLimits =
  | StopsOfStroke
  /** A bend: its stops are found with a test piece. */
  | { is: 'test piece' }
  /** The press has no such station, or a stroke that is too short. */
  | { is: 'stopped'; finding: PressFinding }
  /** The punch does not go over the work with its gap, or the stroke ends before it is in the die. */
  | {
      is: 'out of travel';
      why: 'no room over the work' | 'ends above the stop';
      givenMm: number;
      limitMm: number;
    };

/**
 * The upper and the lower stop of a stroke.
 *
 * Formula: punch: upper = t + working gap, lower = − entry; notch: upper = t + stripper gap, lower = − entry; shear: upper
 *   = t + stripper gap, lower the full stroke. The stripper stands at t + stripper gap, never above the upper stop.
 * @param press the press, its items in mm
 * @param job operation, thickness t and height of the punch in mm
 * @param shop the shop: how far a punch goes into its die, and the gap below the stripper
 * @param working collects the steps when given
 * @returns the stops in mm from the top of the die; or why there are none
 * Valid for thicknesses and heights above zero; throws `invalid` otherwise, and for a cell of the press or a setting that
 *   cannot be read. A blank stroke or height is not checked and not assumed.
 * Source: common practice, no source.
 */
export function strokeLimits(press: Press, job: StrokeJob, shop: Shop, working?: Working): StrokeLimits {
  const { operation, thicknessMm, punchHeightMm } = job;
  requirePositive('Thickness', thicknessMm);
  const [station] = stationOf(press, stationOfStroke[operation], working).findings;
  refuseBadCell(station);
  if (station) return { is: 'stopped', finding: station };
  if (operation === 'bend') return { is: 'test piece' };
  const stops = stopsOf(press, job, shop, working);
  const stroke = strokeFinding(press, job, stops, working);
  refuseBadCell(stroke);
  if (stroke.outcome === 'failed') return { is: 'stopped', finding: stroke };
  const notChecked: PressItemKey[] = stroke.rule === 'blank item' ? [stroke.item] : [];
  if (operation !== 'punch' || punchHeightMm === undefined) return { ...stops, notChecked };
  requirePositive('Height', punchHeightMm);
  const openMm = limitOf(press, 'punchOpenHeight');
  if (typeof openMm !== 'number') {
    refuseBadCell(openMm);
    return { ...stops, notChecked: [...notChecked, 'punchOpenHeight'] };
  }
  if (openMm === Infinity) return { ...stops, notChecked: [...notChecked, 'punchOpenHeight'] };
  return withTravel(press, { ...stops, notChecked }, openMm - punchHeightMm, working);
}

function stopsOf(
  press: Press,
  { operation, thicknessMm }: StrokeJob,
  shop: Shop,
  working?: Working,
): StopsOfStroke {
  const stripperGapMm = setting(shop, 'stripperGapMm');
  const gapMm = operation === 'punch' ? workingGap(press) : stripperGapMm;
  const upperMm = thicknessMm + gapMm;
  const lowerMm = isShear(operation) ? undefined : -setting(shop, 'punchEntryMm');
  const stripperMm = thicknessMm + Math.min(stripperGapMm, gapMm);
  const gap = lengthValue('g', operation === 'punch' ? 'working gap' : 'gap over the work', gapMm);
  if (lowerMm !== undefined) {
    working?.step({
      title: 'Lower stop',
      formula: 'lower = − e',
      values: [lengthValue('e', 'how far the punch goes into the die', -lowerMm)],
      result: lengthValue('lower', 'lower stop, from the top of the die', lowerMm),
      source,
    });
  }
  working?.step({
    title: 'Upper stop',
    formula: 'upper = t + g',
    values: [lengthValue('t', 'thickness', thicknessMm), gap],
    result: lengthValue('upper', 'upper stop, from the top of the die', upperMm),
    source,
    cautions: ['A short stroke saves time. It is never a guard.'],
  });
  return {
    is: 'stops',
    upperMm,
    ...(lowerMm === undefined ? {} : { lowerMm }),
    ...(operation === 'punch' ? { stripperMm } : {}),
    notChecked: [],
  };
}

const source = 'the press and settings of the shop; common practice, no source';

function workingGap(press: Press): number {
  const gapMm = valueOr(press, 'punchWorkingGap', usualWorkingGapMm);
  if (typeof gapMm === 'number') return gapMm;
  refuseBadCell(gapMm);
  return usualWorkingGapMm;
}

const strokeItems = { punch: 'punchStroke', notch: 'notcherStroke' } as const;

/** The stroke of the station must be as long as its stops are apart; a shear's as long as the work is thick. */
function strokeFinding(
  press: Press,
  { operation, thicknessMm }: StrokeJob,
  { upperMm, lowerMm = 0 }: StopsOfStroke,
  working?: Working,
): PressFinding {
  if (operation === 'punch' || operation === 'notch') {
    const sized = { is: 'gap, thickness and die entry' } as const;
    return withinLimit(press, { item: strokeItems[operation], sized, given: upperMm - lowerMm }, working);
  }
  return withinLimit(press, { item: 'shearStroke', sized: { is: 'thickness' }, given: thicknessMm }, working);
}

/** The stops as travel of the ram from the top of its stroke, where the punch stands `tipMm` over the die. */
function withTravel(press: Press, stops: StopsOfStroke, tipMm: number, working?: Working): StrokeLimits {
  const { upperMm, lowerMm = 0 } = stops;
  const travel = ramTravel({ tipMm, upperMm, lowerMm }, working);
  if (!atMost(upperMm, tipMm)) {
    return { is: 'out of travel', why: 'no room over the work', givenMm: tipMm, limitMm: upperMm };
  }
  const stroke = limitOf(press, 'punchStroke');
  if (typeof stroke === 'number' && !atMost(travel.lowerMm, stroke)) {
    return { is: 'out of travel', why: 'ends above the stop', givenMm: travel.lowerMm, limitMm: stroke };
  }
  return { ...stops, travel };
}
