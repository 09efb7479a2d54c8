import { cornerText, writtenCorner } from './corner.js';
import { rewriteFormula } from './rewrite.js';
import { sameName, sheetPrefix } from '../names.js';

/** Where rows, or columns, are now. */
interface HeadersNow {
  /** What is left of several beside each other. */
  span(first: number, last: number): { first: number; last: number } | undefined;
}

/** What became of a sheet that a formula may name. */
export interface MovedSheet {
  before: string;
  /** Undefined for a sheet that is gone. */
  name: string | undefined;
  rows: HeadersNow;
  columns: HeadersNow;
}

const lost = '#REF!';

/** A formula as it reads where sheets, rows and columns moved, were renamed or went. */
export function movedFormula(text: string, home: MovedSheet | undefined, all: readonly MovedSheet[]): string {
  const moveOf = (sheet: string) => all.find(({ before }) => sameName(before, sheet));
  const prefixOf = ({ name, before }: MovedSheet, written: string) =>
    name === undefined || name === before ? written : `${sheetPrefix(name)}!`;
  return rewriteFormula(text, {
    cells: ({ text: written, sheet, prefix, first, last }) => {
      const move = sheet === undefined ? home : moveOf(sheet);
      if (!move) return written;
      if (sheet !== undefined && move.name === undefined) return lost;
      const [from, to] = movedRange(first, last ?? first, move) ?? [];
      if (from === undefined) return lost;
      const own = sheet === undefined ? prefix : prefixOf(move, prefix);
      return own + (last === undefined ? from : `${from}:${to}`);
    },
    name: ({ text: written, sheet, prefix, name }) => {
      const move = sheet === undefined ? undefined : moveOf(sheet);
      if (!move) return written;
      return move.name === undefined ? lost : prefixOf(move, prefix) + name;
    },
  });
}

function movedRange(first: string, last: string, { rows, columns }: MovedSheet): string[] | undefined {
  const [a, b] = [writtenCorner(first), writtenCorner(last)];
  const across = movedPair(a.column, b.column, columns);
  const down = movedPair(a.row, b.row, rows);
  return (
    across &&
    down && [
      cornerText({ ...a, column: across[0], row: down[0] }),
      cornerText({ ...b, column: across[1], row: down[1] }),
    ]
  );
}

/** Both ends, in the order they are written; undefined where nothing is left. */
function movedPair(
  a: number | undefined,
  b: number | undefined,
  map: HeadersNow,
): [number | undefined, number | undefined] | undefined {
  if (a === undefined || b === undefined) return [a, b];
  const span = map.span(Math.min(a, b), Math.max(a, b));
  if (!span) return undefined;
  return a <= b ? [span.first, span.last] : [span.last, span.first];
}
