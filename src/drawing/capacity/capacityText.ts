import type { Grade } from '../../core/material/grade.js';
import type { Press } from '../../core/press/press.js';
import { percent } from '../../core/say/percent.js';
import { formatLength, formatSizes } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shop } from '../../core/shop/readShop.js';
import { leastDimensionMm } from '../../core/tooling/hole.js';
import type { FactTable } from '../drawing.js';
import { greatestGoodShare, type PunchCapacity } from './punchCapacity.js';
import { equalRoundMm, type SelectedHole, selectedText } from './selectedHole.js';

interface Told {
  press: Press;
  grade: Grade;
  shop: Shop;
  rungs: readonly PunchCapacity[];
  selected?: SelectedHole | undefined;
}

const sameMm = 0.01;

/** The title and the one sentence of a capacity drawing. */
export function capacityTitle({ press, grade, shop, rungs, selected }: Told): {
  title: string;
  summary: string;
} {
  const title = `Holes ${press.name} punches in ${grade.name}`;
  const share = percent(greatestGoodShare(press));
  const own = selected && rungs.find((rung) => Math.abs(rung.thicknessMm - selected.thicknessMm) < sameMm);
  if (!selected || !own) {
    const punched = rungs.filter((rung) => works(rung));
    const thickest = punched.at(-1);
    const text = thickest
      ? `punches ${grade.name} up to ${formatLength(thickest.thicknessMm, shop.unit)} ${shop.unit} thick; the shop uses ${share} of the rating.`
      : `punches none of the common thicknesses of ${grade.name}.`;
    return { title, summary: `${press.name} ${text}` };
  }
  const thick = `${grade.name} ${formatLength(selected.thicknessMm, shop.unit)} ${shop.unit} thick`;
  return {
    title,
    summary: `${selectedText(selected, shop.unit)} through ${thick} is ${standing(selected, own, share)} on ${press.name}.`,
  };
}

function works({ stopped, ratingMm, leastMm }: PunchCapacity): boolean {
  return stopped === undefined && ratingMm >= leastMm;
}

const roundingShare = 1e-9;

function standing(selected: SelectedHole, own: PunchCapacity, share: string): string {
  const sizeMm = equalRoundMm(selected.hole);
  if (own.stopped !== undefined) return 'not punched: the work is too thick for the stroke';
  if (leastDimensionMm(selected.hole) < own.leastMm * (1 - roundingShare)) return 'under the smallest hole';
  if (sizeMm > own.ratingMm * (1 + roundingShare)) return 'over the largest hole';
  if (sizeMm > own.shareMm * (1 + roundingShare)) return `above the ${share} the shop uses`;
  return `within the ${share} the shop uses`;
}

function upTo(mm: number, unit: LengthUnit): string {
  return Number.isFinite(mm) ? formatLength(mm, unit) : 'no limit';
}

/** What a rung says, for a reader who does not see it. */
export function capacityLabel(rung: PunchCapacity, punches: readonly number[], unit: LengthUnit): string {
  const thick = `${formatLength(rung.thicknessMm, unit)} ${unit}`;
  if (rung.stopped !== undefined) return `${thick}: none; ${rung.stopped}`;
  if (!works(rung)) return `${thick}: none; the smallest hole takes more than the rating.`;
  const count = fitting(rung, punches).length;
  const largest = largestOnHandMm(rung, punches);
  const named = largest === undefined ? '' : `, the largest Ø${formatSizes([largest], unit)}`;
  const tools = punches.length === 0 ? '' : ` Punches on hand in that range: ${count}${named}.`;
  const caution = rung.unchecked === undefined ? '' : ` ${rung.unchecked}`;
  return `${thick}: holes from ${formatLength(rung.leastMm, unit)} to ${upTo(rung.shareMm, unit)} ${unit} within the shop's share, to ${upTo(rung.ratingMm, unit)} at the rating.${tools}${caution}`;
}

function fitting({ leastMm, ratingMm }: PunchCapacity, punches: readonly number[]): number[] {
  return punches.filter((mm) => mm >= leastMm * (1 - roundingShare) && mm <= ratingMm * (1 + roundingShare));
}

/** The largest punch on hand that a rung takes. */
export function largestOnHandMm(rung: PunchCapacity, punches: readonly number[]): number | undefined {
  return works(rung) ? fitting(rung, punches).at(-1) : undefined;
}

/** The facts of a capacity drawing as rows. */
export function capacityTable({
  grade,
  rungs,
  punches,
  unit,
}: {
  grade: Grade;
  rungs: readonly PunchCapacity[];
  punches: readonly number[];
  unit: LengthUnit;
}): FactTable {
  const headings = [
    'Grade',
    `Thickness, ${unit}`,
    'Smallest hole',
    "To the shop's share",
    'To the rating',
    'Punches on hand',
  ];
  const rows = rungs.map((rung) => [
    grade.name,
    formatLength(rung.thicknessMm, unit),
    ...(works(rung)
      ? [
          formatLength(rung.leastMm, unit),
          rung.shareMm < rung.leastMm ? 'none' : upTo(rung.shareMm, unit),
          upTo(rung.ratingMm, unit),
        ]
      : [formatLength(rung.leastMm, unit), 'none', 'none']),
    fitting(rung, punches)
      .map((mm) => formatSizes([mm], unit))
      .join(', ') || 'none',
  ]);
  return { headings, rows };
}
