import { FormulaSyntaxError, tokenize, type Token } from '../../../sheet/formula/tokens.js';
import { columnLetters, columnNumber } from '../../../sheet/address.js';
import { sheetPrefix } from '../../../sheet/names.js';
import type { HeaderMap } from './headerMap.js';
import type { SheetMove } from './sheetMoves.js';

const lost = '#REF!';
const cornerForm = /^(\$?)([A-Z]{1,3})?(\$?)(\d{1,7})?$/i;

/** A formula of the file that the grid does not keep, where sheets, rows and columns moved, were renamed or went. */
export function movedFormula(text: string, home: SheetMove | undefined, all: readonly SheetMove[]): string {
  try {
    return new Mover(tokenize(text), home, all).move();
  } catch (error) {
    if (error instanceof FormulaSyntaxError) return text;
    throw error;
  }
}

class Mover {
  private at = 0;

  constructor(
    private readonly tokens: readonly Token[],
    private readonly home: SheetMove | undefined,
    private readonly all: readonly SheetMove[],
  ) {}

  move(): string {
    let out = '';
    for (let token = this.peek(); token.kind !== 'end'; token = this.peek())
      out += (token.spaced ? ' ' : '') + this.one(token);
    return out;
  }

  private peek(ahead = 0): Token {
    return this.tokens[Math.min(this.at + ahead, this.tokens.length - 1)] as Token;
  }

  private one(token: Token): string {
    if (token.kind === 'word' || token.kind === 'number') return this.reference(this.home, '');
    this.at++;
    if (token.kind !== 'sheet') return token.text;
    const quoted = token.text.startsWith("'");
    const name = quoted ? token.text.slice(1, -2).replaceAll("''", "'") : token.text.slice(0, -1);
    const move = this.all.find(({ before }) => before.toLowerCase() === name.toLowerCase());
    if (!move) return token.text;
    if (move.name === undefined) {
      this.reference(undefined, '');
      return lost;
    }
    const prefix = move.name === move.before ? token.text : `${sheetPrefix(move.name)}!`;
    return this.reference(move, prefix);
  }

  /** A cell, an area, or a name; with the sheet in front of it. */
  private reference(move: SheetMove | undefined, prefix: string): string {
    const first = this.peek().text;
    if (!['word', 'number', 'error'].includes(this.peek().kind)) return prefix;
    this.at++;
    const ranges = this.peek().text === ':' && ['word', 'number'].includes(this.peek(1).kind);
    if (!ranges) {
      const moved = isCell(first) && move ? movedRange(first, first, move) : [first];
      return moved ? prefix + (moved[0] as string) : lost;
    }
    const last = this.peek(1).text;
    const areCorners = cornerForm.test(first) && cornerForm.test(last);
    if (!areCorners || !move) {
      if (areCorners) this.at += 2;
      return areCorners ? `${prefix}${first}:${last}` : prefix + first;
    }
    this.at += 2;
    const moved = movedRange(first, last, move);
    return moved ? `${prefix}${moved.join(':')}` : lost;
  }
}

const isCell = (text: string): boolean => /^\$?[A-Z]{1,3}\$?\d{1,7}$/i.test(text);

function movedRange(first: string, last: string, { rows, columns }: SheetMove): string[] | undefined {
  const [a, b] = [corner(first), corner(last)];
  const across = movedPair(a.column, b.column, columns);
  const down = movedPair(a.row, b.row, rows);
  if (!across || !down) return undefined;
  const text = (at: 0 | 1, { fixedColumn, fixedRow }: Corner) =>
    fixedColumn +
    (across[at] === undefined ? '' : columnLetters(across[at])) +
    fixedRow +
    (down[at] === undefined ? '' : String(down[at] + 1));
  return [text(0, a), text(1, b)];
}

/** Both ends, in the order they are written; undefined where nothing is left. */
function movedPair(
  a: number | undefined,
  b: number | undefined,
  map: HeaderMap,
): [number | undefined, number | undefined] | undefined {
  if (a === undefined || b === undefined) return [a, b];
  const span = map.span(Math.min(a, b), Math.max(a, b));
  if (!span) return undefined;
  return a <= b ? [span.first, span.last] : [span.last, span.first];
}

interface Corner {
  fixedColumn: string;
  column: number | undefined;
  fixedRow: string;
  row: number | undefined;
}

function corner(text: string): Corner {
  const [, first = '', letters, second = '', digits] = cornerForm.exec(text) ?? [];
  return {
    // Of a row alone, the only dollar sign is that of the row.
    fixedColumn: letters === undefined ? '' : first,
    column: letters === undefined ? undefined : columnNumber(letters),
    fixedRow: letters === undefined ? first || second : second,
    row: digits === undefined ? undefined : Number(digits) - 1,
  };
}
