import { bracketEnd } from '../../xlsx';

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

/** Splits a stored formula (commas, US form) into tokens, in one pass. */
export function tokenize(formula: string): Token[] {
  const tokens: Token[] = [];
  let at = 0;
  const match = (pattern: RegExp): string | undefined => {
    pattern.lastIndex = at;
    return pattern.exec(formula)?.[0];
  };
  while (at < formula.length) {
    const spaces = match(space);
    if (spaces !== undefined) at += spaces.length;
    if (at >= formula.length) break;
    const c = formula[at] as string;
    const kind = single[c];
    const found = kind ? { kind, whole: c } : nextToken(c, formula, at, match);
    tokens.push({ kind: found.kind, text: found.whole, spaced: spaces !== undefined });
    at += found.whole.length;
  }
  tokens.push({ kind: 'end', text: '', spaced: false });
  return tokens;
}

type Match = (pattern: RegExp) => string | undefined;

function nextToken(c: string, formula: string, at: number, match: Match): { kind: TokenKind; whole: string } {
  const take = (kind: TokenKind, whole: string | undefined) => whole !== undefined && { kind, whole };
  const found =
    (c === '"' && take('text', match(text))) ||
    (c === "'" && take('sheet', match(quotedSheet))) ||
    (c === '#' && take('error', match(error))) ||
    take('sheet', match(sheetWord)) ||
    (c === '[' && take('bracket', bracket(formula, at))) ||
    take('number', match(number)) ||
    wordToken(formula, at, match) ||
    take('operator', c === '#' ? '#' : match(operator));
  return found || refuse(formula, at);
}

function wordToken(formula: string, at: number, match: Match): { kind: TokenKind; whole: string } | false {
  const whole = match(word);
  if (whole === undefined) return false;
  return { kind: formula[at + whole.length] === '(' ? 'function' : 'word', whole };
}

function bracket(formula: string, at: number): string {
  const end = bracketEnd(formula, at);
  return end < 0 ? refuse(formula, at) : formula.slice(at, end + 1);
}

function refuse(formula: string, at: number): never {
  throw new FormulaSyntaxError(`The formula cannot be read from "${formula.slice(at, at + 12)}" on.`);
}
