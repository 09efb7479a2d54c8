// The checked rows as text: mark, verdict, share of rating, governs, note, and a count of each verdict.

const columns = ['Mark', 'Verdict', 'Share of rating', 'Governs', 'Note'];

/** The cells of the asked columns below the row that heads them; rows without a verdict are left out. */
export function verdictRows(rows) {
  const top = rows.findIndex((row) => columns.every((name) => row.includes(name)));
  if (top < 0) throw new Error(`The sheet has no row with the headings ${columns.join(', ')}.`);
  const at = columns.map((name) => rows[top].indexOf(name));
  return rows
    .slice(top + 1)
    .map((row) => at.map((column) => row[column]))
    .filter(([, verdict]) => shown(verdict) !== '');
}

function shown(cell) {
  if (cell === null || cell === undefined) return '';
  return typeof cell === 'object' ? cell.error : String(cell);
}

function share(cell) {
  return typeof cell === 'number' ? `${(cell * 100).toFixed(0)}%` : shown(cell);
}

function cut(text, width) {
  return text.length > width ? `${text.slice(0, Math.max(width - 1, 1))}…` : text;
}

/** The table in at most `width` characters a line; a note that does not fit ends with an ellipsis. */
export function verdictTable(rows, width) {
  const body = verdictRows(rows).map(([mark, verdict, use, governs, note]) => [
    shown(mark),
    shown(verdict),
    share(use),
    shown(governs),
    shown(note),
  ]);
  const titles = ['Mark', 'Verdict', 'Share', 'Governs', 'Note'];
  const widths = [0, 1, 2, 3].map((column) =>
    Math.max(...[titles, ...body].map((row) => row[column].length)),
  );
  const rest = width - widths.reduce((sum, each) => sum + each + 2, 0);
  const line = (row) =>
    [
      ...widths.map((each, column) => (column === 2 ? row[column].padStart(each) : row[column].padEnd(each))),
      cut(row[4], Math.max(rest, 30)),
    ]
      .join('  ')
      .trimEnd();
  return [line(titles), ...body.map(line)].join('\n');
}

/** `31 OK, 4 Near limit, …`, most frequent first. */
export function verdictCounts(rows) {
  const counts = new Map();
  for (const [, verdict] of verdictRows(rows))
    counts.set(shown(verdict), (counts.get(shown(verdict)) ?? 0) + 1);
  return [...counts]
    .sort((a, b) => b[1] - a[1])
    .map(([verdict, count]) => `${count} ${verdict}`)
    .join(', ');
}
