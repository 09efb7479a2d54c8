import { distance } from 'fastest-levenshtein';

const greatestShare = 2 / 3;

/**
 * Up to three names that are near to what was typed, nearest first, for a refusal. A name that begins with what was
 * typed (`A572`) comes before every other; names that share too little are left out.
 */
export function nearNames(typed: string, names: readonly string[], key = (name: string) => name): string[] {
  const typedKey = key(typed);
  return names
    .map((name) => ({ name, apart: apart(typedKey, key(name)) }))
    .filter((each) => each.apart <= greatestShare)
    .sort((a, b) => a.apart - b.apart)
    .slice(0, 3)
    .map((each) => each.name);
}

/** Edits as a share of the longer text: 0 the same, 1 nothing in common. */
function apart(typed: string, name: string): number {
  if (typed !== '' && name.startsWith(typed)) return 0;
  return distance(typed, name) / Math.max(typed.length, name.length, 1);
}
