/** What an entry takes beside its key, as characters. */
const perEntry = 100;
const mostCharacters = 2_500_000;

/**
 * Remembers the results of a reading by its key. A parts list repeats the same few texts in thousands of
 * rows; refusals are remembered too, since a refused text is refused again. Where the keys come to more characters than
 * `most`, those that were not asked for the longest are forgotten.
 */
export function memo<Result>(most = mostCharacters): (key: string, read: () => Result) => Result {
  const results = new Map<string, { result: Result } | { error: unknown }>();
  let size = 0;
  const keep = (key: string, outcome: { result: Result } | { error: unknown }) => {
    results.set(key, outcome);
    size += key.length + perEntry;
    for (const [oldest] of results) {
      if (size <= most) return;
      results.delete(oldest);
      size -= oldest.length + perEntry;
    }
  };
  return (key, read) => {
    const known = results.get(key);
    if (known) {
      results.delete(key);
      results.set(key, known);
      if ('error' in known) throw known.error;
      return known.result;
    }
    try {
      const result = read();
      keep(key, { result });
      return result;
    } catch (error) {
      keep(key, { error });
      throw error;
    }
  };
}
