/** Names of sheets, tables, headings and cells are the same in any case. */
export function sameName(a: string, b: string): boolean {
  return a.toLowerCase() === b.toLowerCase();
}

const plainName = /^[\p{L}_][\p{L}\p{N}_]*$/u;

/** A sheet's name as formulas write it: `Quote`, `'Parts list'`. */
export const sheetPrefix = (name: string) => (plainName.test(name) ? name : quotedSheet(name));

/** A sheet's name in quotes, which every formula may write: `'Parts list'`. */
export const quotedSheet = (name: string) => `'${name.replaceAll("'", "''")}'`;

/** A sheet's name, from the way formulas and addresses write it: with quotes or without. */
export function unquotedSheet(written: string): string {
  return written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written;
}

interface FreeNameOptions {
  /** What stands between the name and its number. */
  joint?: string;
  /** How many letters a name may have. */
  longest?: number;
}

/** A name that is not taken: the wanted one, or the first of those with 2, 3 … behind it. */
export function freeName(
  wanted: string,
  taken: readonly string[],
  { joint = '', longest = Infinity }: FreeNameOptions = {},
): string {
  const known = new Set(taken.map((name) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const end = number === 1 ? '' : `${joint}${number}`;
    const name = wanted.slice(0, longest - end.length) + end;
    if (!known.has(name.toLowerCase())) return name;
  }
}
