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

/** The whole note where it fits on a line, else its first sentence, on as many lines as that takes: never half of one. */
function linesOf(note, width) {
  const [first] = note.length > width ? (/^.*?[.!?](?=\s+[A-Z]|$)/.exec(note) ?? [note]) : [note];
  const lines = [''];
  for (const word of first.split(' ')) {
    const last = lines.at(-1);
    if (last !== '' && last.length + 1 + word.length > width) lines.push(word);
    else lines[lines.length - 1] = last === '' ? word : `${last} ${word}`;
  }
  return lines;
}

/** The table in at most `width` characters a line. */
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
  const line = (row) => {
    const notes = linesOf(row[4], Math.max(rest, 30));
    return notes.map((note, at) =>
      [
        ...widths.map((each, column) => {
          const cell = at === 0 ? row[column] : '';
          return column === 2 ? cell.padStart(each) : cell.padEnd(each);
        }),
        note,
      ]
        .join('  ')
        .trimEnd(),
    );
  };
  return [titles, ...body].flatMap(line).join('\n');
}

/** The presses whose column of a shop sheet says that their numbers are invented. */
export function inventedPresses(rows) {
  const top = rows.findIndex(([first]) => shown(first) === 'Item');
  const said = rows.find(([first]) => shown(first).toLowerCase() === 'invented') ?? [];
  return (rows[top] ?? []).flatMap((name, column) =>
    shown(said[column]).toLowerCase() === 'yes' ? shown(name) : [],
  );
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
