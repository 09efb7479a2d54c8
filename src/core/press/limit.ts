import { type PressFinding, refusal } from '../check/finding.js';
import type { Sized } from '../check/pressFact.js';
import type { Verdict } from '../check/verdict.js';
import { megapascalPerKsi } from '../quantity/units.js';
import type { NamedValue, QuantityKind, Working } from '../working/working.js';
import { type Press, pressValue } from './press.js';
import { type PressItemKey, pressItems } from './item/pressItem.js';
import { isMass, sizeMeaning } from './sizeMeaning.js';

/** Unit conversions leave rounding in the last digits; a part at the limit itself is within it. */
export const roundingShare = 1e-9;

/** Where press values come from, for workings. */
export const pressSource = 'the plate and manual of the press, as given in the Presses table';

export function itemName(key: PressItemKey): string {
  return pressItems.find((item) => item.key === key)?.name ?? key;
}

/** The item as it stands within a sentence: `bend V openings`. */
export function governsOf(key: PressItemKey): string {
  const name = itemName(key);
  return `${name.charAt(0).toLowerCase()}${name.slice(1)}`;
}

/** A limit as a number in the core's unit; Infinity for `none`; a finding where it is blank or unreadable. */
export function limitOf(press: Press, key: PressItemKey): number | PressFinding {
  const value = pressValue(press, key);
  if (value.state === 'value') return value.value;
  if (value.state === 'none') return Number.POSITIVE_INFINITY;
  const about = { press: press.name };
  if (value.state === 'bad') return refusal(value.failure, governsOf(key), { ...about, ofPressCell: true });
  return { rule: 'blank item', outcome: 'open', verdict: 'Not checked', item: key, ...about };
}

/** A value that is a default where the press says nothing; a finding only where the cell is unreadable. */
export function valueOr(press: Press, key: PressItemKey, standard: number): number | PressFinding {
  const value = pressValue(press, key);
  if (value.state === 'bad') {
    return refusal(value.failure, governsOf(key), { press: press.name, ofPressCell: true });
  }
  return value.state === 'value' ? value.value : standard;
}

/** Rated sizes stand for this shear strength where the press says nothing. Common practice, no source. */
const usualReferenceShearMPa = 50 * megapascalPerKsi;

/** The shear strength that the sizes on the plate stand for, in MPa. */
export function referenceShearMPa(press: Press): number | PressFinding {
  return valueOr(press, 'referenceShear', usualReferenceShearMPa);
}

/** Reports one value checked against a limit of the press. */
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

interface SizeCheck {
  item: PressItemKey;
  sized: Sized;
  /** In mm; of a mass in kg. */
  given: number;
  /** The word for what is over the limit. */
  over?: Verdict;
}

/** Whether a size is within the press's limit, or what is not known of it. */
export function withinLimit(
  press: Press,
  { item, sized, given, over = 'Too big' }: SizeCheck,
  working?: Working,
): PressFinding {
  const limit = limitOf(press, item);
  const within = typeof limit === 'number' && given <= limit * (1 + roundingShare);
  const verdict = typeof limit !== 'number' ? limit.verdict : within ? 'OK' : over;
  const kind = isMass(sized) ? 'mass' : 'length';
  limitStep(working, press, item, { kind, value: given, meaning: sizeMeaning(sized) }, '≤', verdict);
  if (typeof limit !== 'number') return limit;
  return {
    rule: 'press limit',
    outcome: within ? 'held' : 'failed',
    verdict,
    press: press.name,
    item,
    sized,
    given,
    ...(Number.isFinite(limit) ? { limit } : {}),
  };
}
