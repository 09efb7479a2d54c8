import { groupFields, rowFields } from '../../../core/row/headings/heading.js';
import { headingMeanings } from '../../../core/row/headings/headingMeanings.js';
import { headingUnits } from '../../../core/row/headings/headingUnits.js';
import { otherHeadings } from '../../../core/row/headings/headingWords.js';

/** A heading of a parts list, as people look it up. */
export interface HeadingEntry {
  name: string;
  meaning: string;
  /** Empty where no number stands below it. */
  unit: string;
  also: readonly string[];
}

/** Every heading, in the order of a list. */
export const allHeadings: readonly HeadingEntry[] = [...rowFields, ...groupFields].map(
  ({ key, name, synonyms }) => ({
    name,
    meaning: headingMeanings[key],
    unit: headingUnits[key] ?? '',
    also: [...synonyms, ...otherHeadings(key)],
  }),
);

/** The headings in whose name, meaning or other names every word of a text stands; those so called first. */
export function headingsLike(text: string): HeadingEntry[] {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  const asked = words.join(' ');
  const has = (within: string) => words.every((word) => within.toLowerCase().includes(word));
  const rank = ({ name, meaning, also }: HeadingEntry) => {
    const names = [name.toLowerCase(), ...also];
    if (names.includes(asked)) return 0;
    if (names.some(has)) return 1;
    return has(`${name} ${meaning}`) ? 2 : undefined;
  };
  return allHeadings
    .flatMap((entry) => {
      const at = rank(entry);
      return at === undefined ? [] : [{ entry, at }];
    })
    .sort((a, b) => a.at - b.at)
    .map(({ entry }) => entry);
}
