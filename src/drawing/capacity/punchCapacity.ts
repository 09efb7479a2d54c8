import type { PressFinding } from '../../core/check/finding.js';
import { hardestOf } from '../../core/check/severity.js';
import { InputError, sentenceInCell } from '../../core/inputError.js';
import type { Grade } from '../../core/material/grade.js';
import { shearStrengthMPa } from '../../core/material/shearStrength.js';
import { limitOf } from '../../core/press/limit.js';
import type { Press } from '../../core/press/press.js';
import { punchFindings } from '../../core/press/punchStation.js';
import { shareFinding } from '../../core/press/share.js';
import { pressSentence } from '../../core/say/pressSentence.js';
import type { Shop } from '../../core/shop/readShop.js';
import { setting } from '../../core/shop/setting.js';
import { leastHoleMm } from '../../core/tooling/leastHole.js';

/** The round holes a press punches in one thickness of a grade. */
export interface PunchCapacity {
  thicknessMm: number;
  /** Smallest hole. */
  leastMm: number;
  /** Largest hole up to the shop's share of the rating, and up to the rating; Infinity where nothing limits it. */
  shareMm: number;
  ratingMm: number;
  /** Why nothing of this thickness is punched, whatever the hole. */
  stopped?: string;
  /** What could not be checked. */
  unchecked?: string;
}

/**
 * The capacity of a press in one thickness, asked of the same checks a row goes through: the smallest hole is tried
 * on the press, and since the force of a round hole grows with its diameter alone, its share of the rating gives
 * the hole that takes the whole rating.
 * @returns the capacity, or the sentence that says why there is none
 */
export function punchCapacity(
  press: Press,
  grade: Grade,
  shop: Shop,
  thicknessMm: number,
): PunchCapacity | { problem: string } {
  if (press.problem !== undefined) return { problem: sentenceInCell(press.problem) };
  try {
    return capacityOf(press, grade, shop, thicknessMm);
  } catch (error) {
    if (error instanceof InputError) return { problem: error.message };
    throw error;
  }
}

function capacityOf(
  press: Press,
  grade: Grade,
  shop: Shop,
  thicknessMm: number,
): PunchCapacity | { problem: string } {
  const strength = {
    thicknessMm,
    shearStrengthMPa: shearStrengthMPa({ grade, thicknessMm, shearRatio: setting(shop, 'shearRatio') }),
    holeToThickness: setting(shop, 'holeToThickness'),
    punchAllowanceMPa: setting(shop, 'punchAllowanceMPa'),
    punchEntryMm: setting(shop, 'punchEntryMm'),
  };
  const leastMm = leastHoleMm(strength);
  const tried = punchFindings(press, { ...strength, hole: { shape: 'round', diameterMm: leastMm } });
  const share = hardestOf(tried);
  const missing = tried.find(({ rule }) => rule === 'station');
  const unchecked = tried.find(({ outcome }) => outcome === 'open');
  if (missing || !share) return { problem: said(missing ?? unchecked, shop) ?? 'Not checked.' };
  const stopped = tried.find(
    (finding) =>
      finding.rule === 'press limit' && finding.item === 'punchStroke' && finding.outcome === 'failed',
  );
  const largest = limitOf(press, 'punchLargestHole');
  const plateMm = typeof largest === 'number' ? largest : Infinity;
  const byForceMm = share.use === 0 ? Infinity : leastMm / share.use;
  return {
    thicknessMm,
    leastMm,
    shareMm: Math.min(byForceMm * greatestGoodShare(press), plateMm),
    ratingMm: Math.min(byForceMm, plateMm),
    ...(stopped ? { stopped: pressSentence(stopped, shop.unit) } : {}),
    ...(unchecked ? { unchecked: pressSentence(unchecked, shop.unit) } : {}),
  };
}

function said(finding: PressFinding | undefined, { unit }: Shop): string | undefined {
  return finding && pressSentence(finding, unit);
}

const halvings = 40;

/** The greatest share of the rating that is still OK: the verdict's own limit, found by halving, so that it is stated once. */
export function greatestGoodShare(press: Press): number {
  let good = 0;
  let high = 1;
  const isGood = (use: number) =>
    shareFinding(press, { operation: 'punch force', use, forceN: 0 }).verdict === 'OK';
  if (isGood(high)) return high;
  for (let step = 0; step < halvings; step++) {
    const middle = (good + high) / 2;
    if (isGood(middle)) good = middle;
    else high = middle;
  }
  return good;
}
