/**
 * A table of words that is looked up by what is typed. It lacks the names that every object has: `constructor` is no word.
 */
export function wordTable<Meaning>(words: Readonly<Record<string, Meaning>>): Record<string, Meaning> {
  return Object.assign(Object.create(null) as Record<string, Meaning>, words);
}
