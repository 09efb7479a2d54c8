import { distance } from 'fastest-levenshtein';
import { listWords } from './say/listWords.js';

/** A question that names what was perhaps meant: `Did you mean C8X11.5 or C8X13.75?`; undefined where nothing is near. */
export function didYouMean(
  typed: string,
  names: readonly string[],
  key = (name: string) => name,
): string | undefined {
  const near = nearNames(typed, names, key);
  if (near.length === 0) return undefined;
  return `Did you mean ${listWords(near, 'or')}?`;
}

/** How much of the longer text may differ; names that begin alike, or hold what was typed, may differ more. */
const greatestShare = 2 / 5;
const greatestShareAlike = 2 / 3;

/**
 * Up to three names that are near to what was typed, nearest first, for a refusal. A name that begins with what was
 * typed (`A572`) comes before every other; names that share too little are left out.
 */
export function nearNames(typed: string, names: readonly string[], key = (name: string) => name): string[] {
  const typedKey = key(typed);
  return names
    .map((name) => ({ name, apart: apart(typedKey, key(name)) }))
    .filter(
      ({ apart, name }) => apart <= (areAlike(typedKey, key(name)) ? greatestShareAlike : greatestShare),
    )
    .sort((a, b) => a.apart - b.apart)
    .slice(0, 3)
    .map((each) => each.name);
}

function areAlike(typed: string, name: string): boolean {
  return typed !== '' && (typed.charAt(0) === name.charAt(0) || name.includes(typed));
}

/** Edits as a share of the longer text: 0 the same, 1 nothing in common. */
function apart(typed: string, name: string): number {
  if (typed !== '' && name.startsWith(typed)) return 0;
  return distance(typed, name) / Math.max(typed.length, name.length, 1);
}
