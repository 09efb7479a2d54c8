import { toleranceMm } from '../part/tolerance.js';
import { type Press, pressValue } from '../press/press.js';
import type { Piece, PieceGap } from '../row/piece.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import { miterKerfMm } from './miterKerf.js';

/** How a piece is cut at the back gauge of a press. */
export interface BackGaugeSetting {
  /** What is pushed to the stop, with the slug; or what leaves it open. */
  setting: { mm: number } | { gap: PieceGap | 'Angle shear slug' };
  reach: 'within' | 'over' | 'unknown';
  /** What starts the stroke. Beyond the reach nothing is touched, so it is the pedal. */
  starts: 'touch' | 'pedal' | 'unknown';
}

/**
 * What is pushed to the back gauge of a press for a piece, whether the gauge reaches so far, and what starts the stroke.
 *
 * Formula: p = e + k / cos θ2, as `cutLengthMm` has it; k the slug of the angle shear, 0 for flats and bars
 * @param row the row of the piece; miters in rad
 * @param piece the edges of the piece in mm
 * @param press the press
 * @returns the setting in mm, or the cell that leaves it open
 * Valid for every piece. Throws nothing.
 * @example backGaugeSetting(row, piece, press).setting // { mm: 760 }
 * Source: plane geometry; the plate and manual of the press.
 */
export function backGaugeSetting(row: ReadyRow, piece: Piece, press: Press): BackGaugeSetting {
  const setting = settingOf(row, piece, press);
  const reachMm = gaugeReachMm(press);
  if (reachMm === undefined || !('mm' in setting)) {
    return { setting, reach: 'unknown', starts: startsOf(press) };
  }
  if (setting.mm > reachMm + toleranceMm) return { setting, reach: 'over', starts: 'pedal' };
  return { setting, reach: 'within', starts: startsOf(press) };
}

/** Infinity where the press says `none`; undefined where it says nothing that can be read. */
export function gaugeReachMm(press: Press): number | undefined {
  const reach = pressValue(press, 'backGaugeReach');
  if (reach.state === 'none') return Number.POSITIVE_INFINITY;
  return reach.state === 'value' ? reach.value : undefined;
}

/** What a cut of the press loses: the slug of a double-cut angle shear, none of a single blade; undefined where the press does not say. */
export function slugMm({ section }: { section: { kind: string } }, press: Press): number | undefined {
  if (section.kind !== 'angle') return 0;
  const slug = pressValue(press, 'angleShearSlug');
  if (slug.state === 'none') return 0;
  return slug.state === 'value' ? slug.value : undefined;
}

function settingOf(row: ReadyRow, piece: Piece, press: Press): BackGaugeSetting['setting'] {
  const { least, most } = piece.leftLong;
  if (least < most) return { gap: piece.gap ?? 'Long side' };
  const kerfMm = slugMm(row, press);
  if (kerfMm === undefined) return { gap: 'Angle shear slug' };
  if (kerfMm === 0) return { mm: least };
  return { mm: least + miterKerfMm({ kerfMm, miterRad: row.miterRightRad }) };
}

function startsOf(press: Press): BackGaugeSetting['starts'] {
  const starts = pressValue(press, 'backGaugeStartsStroke');
  if (starts.state !== 'value') return 'unknown';
  return starts.value === 0 ? 'pedal' : 'touch';
}
