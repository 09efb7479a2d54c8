/** So many runs of rows are named. */
const mostNamed = 8;

/** Rows as people write them: `8, 14–16 and 20`; the number of those that are too many to name. */
export function rowRuns(rows: readonly number[]): string {
  const runs: { from: number; to: number }[] = [];
  for (const row of [...rows].sort((a, b) => a - b)) {
    const last = runs.at(-1);
    if (last && row <= last.to + 1) last.to = row;
    else runs.push({ from: row, to: row });
  }
  const named = runs
    .slice(0, mostNamed)
    .map(({ from, to }) => (from === to ? String(from) : `${from}–${to}`));
  const more = runs.slice(mostNamed).reduce((sum, { from, to }) => sum + to - from + 1, 0);
  const all = more > 0 ? [...named, `${more.toLocaleString('en')} more`] : named;
  return all.length === 1 ? (all[0] ?? '') : `${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
}
