import type { Grade } from '../../core/material/grade.js';
import type { Press } from '../../core/press/press.js';
import { formatLength, formatNumber } from '../../core/quantity/formatLength.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shop } from '../../core/shop/readShop.js';
import { leastDimensionMm } from '../../core/tooling/hole.js';
import type { FactTable } from '../drawing.js';
import { greatestGoodShare, type PunchCapacity } from './punchCapacity.js';
import { equalRoundMm, type SelectedHole, selectedText } from './selectedHole.js';

interface Told {
  press: Press;
  grades: readonly Grade[];
  shop: Shop;
  rungs: readonly PunchCapacity[];
  selected?: SelectedHole | undefined;
}

const sameMm = 0.01;

/** The title and the one sentence of a capacity drawing. */
export function capacityTitle({ press, grades, shop, rungs, selected }: Told): {
  title: string;
  summary: string;
} {
  const names = grades.map(({ name }) => name).join(', ');
  const title = `Holes ${press.name} punches in ${names}`;
  const percent = formatNumber(greatestGoodShare(press) * 100, 1);
  const own = selected && rungs.find((rung) => Math.abs(rung.thicknessMm - selected.thicknessMm) < sameMm);
  if (!selected || !own) {
    const punched = rungs.filter((rung) => works(rung));
    const thickest = punched.at(-1);
    const text = thickest
      ? `punches ${grades[0]?.name ?? ''} up to ${formatLength(thickest.thicknessMm, shop.unit)} ${shop.unit} thick; the shop uses ${percent} % of the rating.`
      : `punches none of the common thicknesses of ${grades[0]?.name ?? ''}.`;
    return { title, summary: `${press.name} ${text}` };
  }
  const thick = `${grades[0]?.name ?? ''} ${formatLength(selected.thicknessMm, shop.unit)} ${shop.unit} thick`;
  return {
    title,
    summary: `${selectedText(selected, shop.unit)} through ${thick} is ${standing(selected, own, percent)} on ${press.name}.`,
  };
}

function works({ stopped, ratingMm, leastMm }: PunchCapacity): boolean {
  return stopped === undefined && ratingMm >= leastMm;
}

const roundingShare = 1e-9;

function standing(selected: SelectedHole, own: PunchCapacity, percent: string): string {
  const sizeMm = equalRoundMm(selected.hole);
  if (own.stopped !== undefined) return 'not punched: the work is too thick for the stroke';
  if (leastDimensionMm(selected.hole) < own.leastMm * (1 - roundingShare)) return 'under the least hole';
  if (sizeMm > own.ratingMm * (1 + roundingShare)) return 'over the largest hole';
  if (sizeMm > own.shareMm * (1 + roundingShare)) return `above the ${percent} % the shop uses`;
  return `within the ${percent} % the shop uses`;
}

function upTo(mm: number, unit: LengthUnit): string {
  return Number.isFinite(mm) ? formatLength(mm, unit) : 'no limit';
}

/** What a rung says, for a reader who does not see it. */
export function capacityLabel(rung: PunchCapacity, punches: readonly number[], unit: LengthUnit): string {
  const thick = `${formatLength(rung.thicknessMm, unit)} ${unit}`;
  if (rung.stopped !== undefined) return `${thick}: none; ${rung.stopped}`;
  if (!works(rung)) return `${thick}: none; the least hole takes more than the rating.`;
  const count = fitting(rung, punches).length;
  const tools = punches.length === 0 ? '' : ` Punches on hand in that range: ${count}.`;
  const caution = rung.unchecked === undefined ? '' : ` ${rung.unchecked}`;
  return `${thick}: holes from ${formatLength(rung.leastMm, unit)} to ${upTo(rung.shareMm, unit)} ${unit} within the shop's share, to ${upTo(rung.ratingMm, unit)} at the rating.${tools}${caution}`;
}

function fitting({ leastMm, ratingMm }: PunchCapacity, punches: readonly number[]): number[] {
  return punches.filter((mm) => mm >= leastMm * (1 - roundingShare) && mm <= ratingMm * (1 + roundingShare));
}

/** The facts of a capacity drawing as rows. */
export function capacityTable(
  grades: readonly { grade: Grade; rungs: readonly PunchCapacity[] }[],
  punches: readonly number[],
  unit: LengthUnit,
): FactTable {
  const headings = [
    'Grade',
    `Thickness, ${unit}`,
    'Least hole',
    "To the shop's share",
    'To the rating',
    'Punches on hand',
  ];
  const rows = grades.flatMap(({ grade, rungs }) =>
    rungs.map((rung) => [
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
        .map((mm) => formatLength(mm, unit))
        .join(', ') || 'none',
    ]),
  );
  return { headings, rows };
}
