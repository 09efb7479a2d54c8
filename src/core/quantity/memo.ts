const largestMemo = 20_000;

/**
 * Remembers the results of a reading by its key. A parts list repeats the same few texts in thousands of
 * rows; refusals are remembered too, since a refused text is refused again.
 */
export function memo<Result>(): (key: string, read: () => Result) => Result {
  const results = new Map<string, { result: Result } | { error: unknown }>();
  return (key, read) => {
    const known = results.get(key);
    if (known) {
      if ('error' in known) throw known.error;
      return known.result;
    }
    if (results.size >= largestMemo) results.clear();
    try {
      const result = read();
      results.set(key, { result });
      return result;
    } catch (error) {
      results.set(key, { error });
      throw error;
    }
  };
}
