import { type Press, pressValue } from './press.js';
import { type PressItemKey, pressItems, type Station } from './pressItem.js';
import type { Finding, Verdict } from './finding.js';
import { formatLength } from '../quantity/formatLength.js';
import type { LengthUnit } from '../quantity/units.js';
import type { NamedValue, QuantityKind, Working } from '../working/working.js';

/** Unit conversions leave rounding in the last digits; a part at the limit itself is within it. */
export const roundingShare = 1e-9;

export function itemName(key: PressItemKey): string {
  return pressItems.find((item) => item.key === key)?.name ?? key;
}

/** The item as it stands within a sentence: `bend V openings`. */
export function governsOf(key: PressItemKey): string {
  const name = itemName(key);
  return `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}

/** A cell of the press, or the press itself, cannot be read. */
export function unreadable(governs: string, note: string): Finding {
  return { verdict: 'Check input', governs, note, ofPressCell: true };
}

/** A limit as a number in the core's unit; Infinity for `none`; a finding where it is blank or unreadable. */
export function limitOf(press: Press, key: PressItemKey): number | Finding {
  const value = pressValue(press, key);
  if (value.state === 'value') return value.value;
  if (value.state === 'none') return Number.POSITIVE_INFINITY;
  const governs = governsOf(key);
  if (value.state === 'bad') return unreadable(governs, value.message);
  return {
    verdict: 'Not checked',
    governs,
    note: `${itemName(key)} of ${press.name} is blank, so it was not checked.`,
  };
}

/** A value that is a default where the press says nothing; a finding only where the cell is unreadable. */
export function valueOr(press: Press, key: PressItemKey, standard: number): number | Finding {
  const value = pressValue(press, key);
  if (value.state === 'bad') return unreadable(governsOf(key), value.message);
  return value.state === 'value' ? value.value : standard;
}

interface SizeCheck {
  key: PressItemKey;
  sizeMm: number;
  /** What has the size, with it, as the note says it: `hole Ø1-1/4`. */
  what: string;
  /** What the size is, without it, as a step says it: `largest dimension of the hole`. */
  meaning: string;
  unit: LengthUnit;
  verdict?: Verdict;
}

/** Where press values come from, for workings. */
export const pressSource = 'the plate and manual of the press, as given in the Presses table';

/** Reports one value held against a limit of the press. */
export function limitStep(
  working: Working | undefined,
  press: Press,
  key: PressItemKey,
  size: { kind: QuantityKind; value: number; meaning: string },
  relation: '≤' | '≥',
  outcome: Verdict,
): void {
  if (!working) return;
  const limit = pressValue(press, key);
  const value: number | string = limit.state === 'value' ? limit.value : limit.state;
  const bound: NamedValue = {
    symbol: 'limit',
    meaning: `${itemName(key)} of ${press.name}`,
    kind: size.kind,
    value,
  };
  working.step({
    title: itemName(key),
    formula: `size ${relation} limit`,
    values: [{ symbol: 'size', ...size }, bound],
    result: { symbol: 'verdict', meaning: 'outcome of the check', kind: 'text', value: outcome },
    source: pressSource,
  });
}

/** Nothing where the size is within the press's limit; else what is wrong or not known. */
export function withinLimit(
  press: Press,
  { key, sizeMm, what, meaning, unit, verdict = 'Too big' }: SizeCheck,
  working?: Working,
): Finding[] {
  const limit = limitOf(press, key);
  const within = typeof limit === 'number' && sizeMm <= limit * (1 + roundingShare);
  const outcome = typeof limit !== 'number' ? limit.verdict : within ? 'OK' : verdict;
  limitStep(working, press, key, { kind: 'length', value: sizeMm, meaning }, '≤', outcome);
  if (typeof limit !== 'number') return [limit];
  if (within) return [];
  const note = `${what} is over ${press.name}'s ${governsOf(key)}, ${formatLength(limit, unit)} ${unit}.`;
  return [{ verdict, governs: governsOf(key), note }];
}

/** The stations a row of work may need. */
export type StationKey = Extract<PressItemKey, keyof typeof stationNames>;

/**
 * Whether the press has a station: `missing` ends the check; a blank or unreadable cell is a finding beside
 * the others, since the limits may still be known.
 */
export function stationOf(
  press: Press,
  station: StationKey,
  working?: Working,
): { findings: Finding[]; missing: boolean } {
  const name: Station = stationNames[station];
  const value = limitOf(press, station);
  const missing: Finding = { verdict: 'No station', governs: name, note: `${press.name} has no ${name}.` };
  const found = typeof value !== 'number' ? [value] : value === 0 ? [missing] : [];
  const findings = found.map((finding) => ({ ...finding, station: name }));
  working?.step({
    title: `Station: ${name}`,
    formula: 'the press has the station',
    values: [{ symbol: 'press', meaning: 'press', kind: 'text', value: press.name }],
    result: {
      symbol: 'verdict',
      meaning: 'outcome of the check',
      kind: 'text',
      value: findings[0]?.verdict ?? 'OK',
    },
    source: pressSource,
  });
  return { findings, missing: value === 0 };
}

const stationNames = {
  punch: 'punch',
  flatShear: 'flat shear',
  angleShear: 'angle shear',
  barShear: 'bar shear',
  notcher: 'notcher',
  bend: 'bending attachment',
} as const;

const defaultShareToUse = 0.8;

const mostPercentDecimals = 6;

/** A share in percent, with as many decimals as tell it from the limits it is not equal to: `80.3 %` beside 80 %. */
function percentBeside(use: number, limits: readonly number[]): string {
  const apart = limits.filter((limit) => Math.abs(use - limit) > limit * roundingShare);
  let decimals = use < 0.0995 ? 1 : 0;
  const isTold = () =>
    apart.every((limit) => (use * 100).toFixed(decimals) !== (limit * 100).toFixed(decimals));
  while (decimals < mostPercentDecimals && !isTold()) decimals += 1;
  return `${(use * 100).toFixed(decimals)} %`;
}

/** The share of a rating as a finding: over capacity above 1, near limit above the shop's share, else OK. */
export function shareFinding(press: Press, use: number, forceN: number, governs: string): Finding {
  const shareToUse = valueOr(press, 'shareToUse', defaultShareToUse);
  if (typeof shareToUse !== 'number') return shareToUse;
  const percent = percentBeside(use, [1, shareToUse]);
  if (use > 1 + roundingShare) {
    return {
      verdict: 'Over capacity',
      governs,
      use,
      forceN,
      note: `${governs} is ${percent} of ${press.name}'s rating.`,
    };
  }
  if (use > shareToUse * (1 + roundingShare)) {
    const note = `${governs} is ${percent} of ${press.name}'s rating, above the ${Number((shareToUse * 100).toFixed(1))} % the shop uses.`;
    return { verdict: 'Near limit', governs, use, forceN, note };
  }
  return { verdict: 'OK', governs, use, forceN, note: '' };
}
