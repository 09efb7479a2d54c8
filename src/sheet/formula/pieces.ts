import { unquotedSheet } from '../names.js';
import { readCorner } from './corner.js';
import { type Token, tokenizeAll } from './tokens.js';

/** Cells as a formula names them by address. */
export interface CellsPiece {
  kind: 'cells';
  text: string;
  /** The sheet before it, without quotes; undefined where none is written. */
  sheet: string | undefined;
  /** The sheet as written, with its exclamation mark; empty where none is written. */
  prefix: string;
  /** `$B$3`, `B` or `3`. */
  first: string;
  /** Undefined for a single cell. */
  last: string | undefined;
}

/** A reference to a table: `Parts[[#Headers],[Mark]]`. */
export interface TablePiece {
  kind: 'table';
  text: string;
  /** Empty where the formula stands in the table it names. */
  name: string;
  bracket: string;
}

/** A name, or what else stands behind a sheet: `Shop!#REF!`. */
export interface NamePiece {
  kind: 'name';
  text: string;
  sheet: string | undefined;
  prefix: string;
  name: string;
}

/** A function's name before its arguments, a text in quotes, what no formula has, or anything else. */
export interface PlainPiece {
  kind: 'call' | 'text' | 'unreadable' | 'other';
  text: string;
}

export type Piece = CellsPiece | TablePiece | NamePiece | PlainPiece;

/** A formula in pieces: their texts, one after the other, are the formula. */
export function readPieces(formula: string): Piece[] {
  return new PieceReader(formula, tokenizeAll(formula)).all();
}

const unshifted = { rows: 0, columns: 0 };

class PieceReader {
  private at = 0;
  /** How far the formula is read. */
  private read = 0;
  private readonly pieces: Piece[] = [];

  constructor(
    private readonly formula: string,
    private readonly tokens: readonly Token[],
  ) {}

  all(): Piece[] {
    for (let token = this.take(); token.kind !== 'end'; token = this.take())
      this.pieces.push(this.one(token));
    if (this.read < this.formula.length)
      this.pieces.push({ kind: 'other', text: this.formula.slice(this.read) });
    return this.pieces;
  }

  private peek(ahead = 0): Token {
    return this.tokens[Math.min(this.at + ahead, this.tokens.length - 1)] as Token;
  }

  /** The next token; white space before it is a piece of its own. */
  private take(): Token {
    const token = this.peek();
    this.at += 1;
    if (token.kind === 'end') return token;
    const start = this.formula.indexOf(token.text, this.read);
    if (start > this.read) this.pieces.push({ kind: 'other', text: this.formula.slice(this.read, start) });
    this.read = start + token.text.length;
    return token;
  }

  private one(token: Token): Piece {
    switch (token.kind) {
      case 'function':
        return { kind: 'call', text: token.text };
      case 'text':
      case 'unreadable':
        return { kind: token.kind, text: token.text };
      case 'bracket':
        return { kind: 'table', text: token.text, name: '', bracket: token.text };
      case 'sheet':
        return this.onSheet(token.text);
      case 'word':
      case 'number':
        return this.word(token, undefined, '');
      default:
        return { kind: 'other', text: token.text };
    }
  }

  private onSheet(prefix: string): Piece {
    const sheet = unquotedSheet(prefix.slice(0, -1));
    const next = this.peek();
    if (next.spaced || !['word', 'number', 'error'].includes(next.kind))
      return { kind: 'name', text: prefix, sheet, prefix, name: '' };
    return this.word(this.take(), sheet, prefix);
  }

  private word({ kind, text: first }: Token, sheet: string | undefined, prefix: string): Piece {
    const corner = readCorner(first, unshifted);
    const last = corner && this.secondCorner();
    if (last !== undefined)
      return { kind: 'cells', text: `${prefix}${first}:${last}`, sheet, prefix, first, last };
    if (corner?.row !== undefined && corner.column !== undefined)
      return { kind: 'cells', text: prefix + first, sheet, prefix, first, last: undefined };
    if (kind === 'number' && sheet === undefined) return { kind: 'other', text: first };
    const bracket = this.peek();
    if (sheet === undefined && bracket.kind === 'bracket' && !bracket.spaced) {
      this.take();
      return { kind: 'table', text: first + bracket.text, name: first, bracket: bracket.text };
    }
    return { kind: 'name', text: prefix + first, sheet, prefix, name: first };
  }

  /** The corner behind a colon, which is read with it. */
  private secondCorner(): string | undefined {
    const [colon, last] = [this.peek(), this.peek(1)];
    if (colon.text !== ':' || colon.spaced || last.spaced) return undefined;
    if ((last.kind !== 'word' && last.kind !== 'number') || !readCorner(last.text, unshifted))
      return undefined;
    this.take();
    this.take();
    return last.text;
  }
}
