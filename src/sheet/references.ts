const texts = /"(?:[^"]|"")*"/g;
const address =
  /(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?\$?[A-Z]{1,3}(\$?)(\d{1,7})(?::\$?[A-Z]{1,3}(\$?)(\d{1,7}))?(?![\p{L}\p{N}_(!.])/giu;

interface Address {
  /** In lower case; undefined for the formula's own sheet. */
  sheet: string | undefined;
  /** Relative rows, counted from 0; undefined where a row is fixed. */
  rows: (number | undefined)[];
}

/** The cells a formula names by address, outside its texts and the brackets of tables. */
function addresses(formula: string): Address[] {
  const bare = withoutBrackets(formula.replace(texts, '""'));
  return [...bare.matchAll(address)].map(([, sheet, fixedFirst, first, fixedLast, last]) => ({
    sheet: sheet?.replace(/^'|'$/g, '').replace(/''/g, "'").toLowerCase(),
    rows: [
      [fixedFirst, first],
      [fixedLast, last],
    ].flatMap(([fixed, row]) => (row === undefined ? [] : [fixed === '' ? Number(row) - 1 : undefined])),
  }));
}

function withoutBrackets(formula: string): string {
  let depth = 0;
  let kept = '';
  for (const letter of formula) {
    if (letter === '[') depth += 1;
    if (depth === 0) kept += letter;
    if (letter === ']') depth -= 1;
  }
  return kept;
}

/** The sheets whose cells a formula names by address, in lower case. */
export function addressedSheets(formula: string, own: string): string[] {
  return [...new Set(addresses(formula).map(({ sheet }) => sheet ?? own.toLowerCase()))];
}

/** Whether every address in a formula is of the formula's own row, so that it may move with the row. */
export function namesOnlyItsRow(formula: string, row: number): boolean {
  return addresses(formula).every(
    ({ sheet, rows }) => sheet === undefined && rows.every((each) => each === row),
  );
}

/** The formula with every address of its own row moved down by some rows. */
export function movedWithRow(formula: string, down: number): string {
  if (down === 0) return formula;
  let depth = 0;
  return formula
    .split(/("(?:[^"]|"")*"|[[\]])/)
    .map((piece) => {
      if (piece === '[') depth += 1;
      else if (piece === ']') depth -= 1;
      else if (depth === 0 && !piece.startsWith('"'))
        return piece.replace(address, (found) =>
          found.replace(
            /(\$?[A-Z]{1,3}\$?)(\d{1,7})/gi,
            (_, column: string, row: string) => `${column}${Number(row) + down}`,
          ),
        );
      return piece;
    })
    .join('');
}

/** The headings that the structured references of a formula name, with the table before them where one is written. */
export function namedHeadings(formula: string): { table: string | undefined; heading: string }[] {
  const found: { table: string | undefined; heading: string }[] = [];
  const bare = formula.replace(texts, '""');
  let table: string | undefined;
  let depth = 0;
  for (let at = 0; at < bare.length; at += 1) {
    const letter = bare[at];
    if (letter === '[') {
      if (depth === 0) table = /[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.exec(bare.slice(0, at))?.[0];
      depth += 1;
      const inner = /^\[((?:[^[\]#@']|'.)(?:[^[\]']|'.)*)\]/su.exec(bare.slice(at));
      const single = /^\[@((?:[^[\]']|'.)+)\]/su.exec(bare.slice(at));
      const name = inner?.[1] ?? single?.[1];
      if (name !== undefined && !/^[,:\s]*$/.test(name))
        found.push({ table, heading: name.replace(/'(.)/gsu, '$1') });
    } else if (letter === ']') depth -= 1;
  }
  return found;
}
