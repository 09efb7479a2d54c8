/** What an entry takes beside its key, as characters. */
const perEntry = 100;
const mostCharacters = 2_500_000;

type Outcome<Result> = { asked: number } & ({ result: Result } | { error: unknown });

/**
 * Remembers the results of a reading by its key. A parts list repeats the same few texts in thousands of
 * rows; refusals are remembered too, since a refused text is refused again. Where the keys come to more characters than
 * `most`, those that were not asked for the longest are forgotten.
 */
export function memo<Result>(most = mostCharacters): (key: string, read: () => Result) => Result {
  const results = new Map<string, Outcome<Result>>();
  // A new search for the oldest key would pass all that were forgotten before.
  let oldest = results.keys();
  let [size, kept] = [0, 0];
  const forget = () => {
    const next = oldest.next();
    if (next.done) oldest = results.keys();
    else if (results.delete(next.value)) size -= next.value.length + perEntry;
  };
  const keep = (key: string, outcome: Outcome<Result>) => {
    results.set(key, outcome);
    size += key.length + perEntry;
    while (size > most) forget();
  };
  return (key, read) => {
    const known = results.get(key);
    if (known) {
      // Only one that is among the older half is brought to the end of the row.
      if (kept - known.asked > results.size / 2) {
        known.asked = ++kept;
        results.delete(key);
        results.set(key, known);
      }
      if ('error' in known) throw known.error;
      return known.result;
    }
    const asked = ++kept;
    try {
      const result = read();
      keep(key, { asked, result });
      return result;
    } catch (error) {
      keep(key, { asked, error });
      throw error;
    }
  };
}
