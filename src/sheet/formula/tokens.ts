import { bracketEnd } from './tableReference.js';

export type TokenKind =
  | 'number'
  | 'text'
  | 'error'
  | 'operator'
  | 'open'
  | 'close'
  | 'openArray'
  | 'closeArray'
  | 'separator'
  | 'rowSeparator'
  | 'function'
  | 'sheet'
  | 'bracket'
  | 'word'
  | 'unreadable'
  | 'end';

export interface Token {
  kind: TokenKind;
  text: string;
  /** White space stood before it, which between two references is an operator. */
  spaced: boolean;
}

const space = /[ \t\r\n]+/y;
const number = /(?:\d+(?:\.\d*)?|\.\d+)(?:e[+-]?\d+)?(?![\p{L}\p{N}_.:$!])/iuy;
const text = /"(?:[^"]|"")*"/y;
const error =
  /#(?:NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|N\/A|GETTING_DATA|SPILL!|CALC!|FIELD!|BLOCKED!|CONNECT!|UNKNOWN!|BUSY!)/iy;
const operator = /<>|<=|>=|[-+*/^&=<>%:@]/y;
const quotedSheet = /'(?:[^']|'')*'!/y;
const word = /[\p{L}\p{N}_$\\?][\p{L}\p{N}_.$\\?]*/uy;
const sheetWord = /(?:\[\d+\])?[\p{L}\p{N}_.]*(?::[\p{L}\p{N}_.]+)?!/uy;

const single: Record<string, TokenKind> = {
  '(': 'open',
  ')': 'close',
  '{': 'openArray',
  '}': 'closeArray',
  ',': 'separator',
  ';': 'rowSeparator',
};

/** A formula that is not written as formulas are. */
export class FormulaSyntaxError extends Error {}

export const cannotBeRead = (rest: string) =>
  new FormulaSyntaxError(`The formula cannot be read from "${rest.slice(0, 12)}" on.`);

/** Splits a stored formula (commas, US form) into tokens, in one pass. Throws where one cannot be read. */
export function tokenize(formula: string): Token[] {
  return new Lexer(formula, false).tokens();
}

/** Splits a formula into tokens; what cannot be read is a token, too. */
export function tokenizeAll(formula: string): Token[] {
  return new Lexer(formula, true).tokens();
}

class Lexer {
  private at = 0;
  /** The next exclamation mark: without one ahead, no sheet is named. */
  private bang: number;

  constructor(
    private readonly formula: string,
    private readonly keepsUnreadable: boolean,
  ) {
    this.bang = formula.indexOf('!');
  }

  tokens(): Token[] {
    const tokens: Token[] = [];
    for (;;) {
      const spaced = this.match(space) !== undefined;
      if (this.at >= this.formula.length) break;
      const { kind, text } = this.next();
      tokens.push({ kind, text, spaced });
    }
    tokens.push({ kind: 'end', text: '', spaced: false });
    return tokens;
  }

  /** What a pattern matches here; moves past it. */
  private match(pattern: RegExp): string | undefined {
    pattern.lastIndex = this.at;
    if (!pattern.test(this.formula)) return undefined;
    const found = this.formula.slice(this.at, pattern.lastIndex);
    this.at = pattern.lastIndex;
    return found;
  }

  private next(): { kind: TokenKind; text: string } {
    const c = this.formula[this.at] as string;
    const kind = single[c];
    if (kind) {
      this.at++;
      return { kind, text: c };
    }
    return (
      this.take('operator', operator) ??
      (c === '"' ? this.take('text', text) : undefined) ??
      (c === "'" ? this.take('sheet', quotedSheet) : undefined) ??
      (c === '#' ? this.hash() : undefined) ??
      this.sheet() ??
      (c === '[' ? this.bracket() : undefined) ??
      this.take('number', number) ??
      this.word() ??
      this.unreadable(c)
    );
  }

  private take(kind: TokenKind, pattern: RegExp): { kind: TokenKind; text: string } | undefined {
    const found = this.match(pattern);
    return found === undefined ? undefined : { kind, text: found };
  }

  private hash(): { kind: TokenKind; text: string } {
    const found = this.take('error', error);
    if (!found) this.at++;
    return found ?? { kind: 'operator', text: '#' };
  }

  private sheet(): { kind: TokenKind; text: string } | undefined {
    if (this.bang >= 0 && this.bang < this.at) this.bang = this.formula.indexOf('!', this.at);
    return this.bang < 0 ? undefined : this.take('sheet', sheetWord);
  }

  private word(): { kind: TokenKind; text: string } | undefined {
    const found = this.match(word);
    if (found === undefined) return undefined;
    return { kind: this.formula[this.at] === '(' ? 'function' : 'word', text: found };
  }

  private bracket(): { kind: TokenKind; text: string } {
    const end = bracketEnd(this.formula, this.at);
    if (end < 0) return this.unreadable('[');
    const found = this.formula.slice(this.at, end + 1);
    this.at = end + 1;
    return { kind: 'bracket', text: found };
  }

  /** What is opened and never closed goes on to the end. */
  private unreadable(first: string): { kind: TokenKind; text: string } {
    if (!this.keepsUnreadable) this.refuse();
    const start = this.at;
    this.at = `"'[`.includes(first) ? this.formula.length : start + 1;
    return { kind: 'unreadable', text: this.formula.slice(start, this.at) };
  }

  private refuse(): never {
    throw cannotBeRead(this.formula.slice(this.at));
  }
}
