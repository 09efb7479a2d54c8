import { displayFunctionName } from './functionNames.js';
import { noFunctions, noteFunction } from './calledFunctions.js';
import { TokenCursor } from './tokenCursor.js';
import { FormulaSyntaxError, tokenize, type Token } from './tokens.js';
import type { Formula, Node } from './nodes.js';
import { ReferenceReader, type Place } from './referenceReader.js';
import type { Scope } from './scope.js';

export type { Place } from './referenceReader.js';

const precedence: Record<string, number> = {
  '=': 1,
  '<>': 1,
  '<': 1,
  '>': 1,
  '<=': 1,
  '>=': 1,
  '&': 2,
  '+': 3,
  '-': 3,
  '*': 4,
  '/': 4,
  '^': 5,
};

const deepest = 120;

/** Reads a formula's text (no equals sign) as it stands in a cell; what it cannot do is said in the result. */
export function parseFormula(text: string, place: Place, scope: Scope): Formula {
  const formula: Formula = {
    node: { kind: 'error', code: '#NAME?' },
    references: [],
    spills: [],
    functions: noFunctions,
    ours: false,
    unsupported: undefined,
    dynamic: false,
  };
  new Parser(text, place, scope, formula, 0).parse((node) => (formula.node = node));
  return formula;
}

class Parser {
  private tokens = new TokenCursor([]);
  private depth = 0;
  private readonly references: ReferenceReader;

  constructor(
    private readonly text: string,
    private readonly place: Place,
    private readonly scope: Scope,
    private readonly formula: Formula,
    private readonly nameDepth: number,
  ) {
    this.references = new ReferenceReader(place, scope, formula, (name, sheet) =>
      this.inlineName(name, sheet),
    );
  }

  parse(keep: (node: Node) => void): void {
    try {
      this.tokens = new TokenCursor(tokenize(this.text));
      keep(this.expression(0));
      if (this.tokens.peek().kind !== 'end') this.tokens.stop();
    } catch (error) {
      if (!(error instanceof FormulaSyntaxError)) throw error;
      this.formula.unsupported ??= error.message;
      // What follows was not read, so it may depend on anything.
      this.formula.dynamic = true;
    }
  }

  private expression(least: number): Node {
    if (++this.depth > deepest) throw new FormulaSyntaxError('The formula is nested too deeply.');
    let left = this.unary();
    for (;;) {
      const { kind, text } = this.tokens.peek();
      const level = kind === 'operator' ? (precedence[text] ?? 0) : 0;
      if (level === 0 || level <= least) break;
      this.tokens.take();
      left = { kind: 'binary', operator: text, left, right: this.expression(level) };
    }
    this.depth--;
    return left;
  }

  /** A sign binds tighter than the power operator: -2^2 is 4. */
  private unary(): Node {
    const { kind, text } = this.tokens.peek();
    if (kind === 'operator' && (text === '-' || text === '+')) {
      this.tokens.take();
      if (++this.depth > deepest) throw new FormulaSyntaxError('The formula is nested too deeply.');
      const operand = this.unary();
      this.depth--;
      return { kind: 'unary', operator: text, operand };
    }
    if (kind === 'operator' && text === '@') {
      this.tokens.take();
      return { kind: 'intersection', operand: this.unary() };
    }
    let node = this.primary();
    while (this.tokens.peek().kind === 'operator') {
      if (this.tokens.peek().text === '%') node = { kind: 'unary', operator: '%', operand: node };
      else if (this.tokens.peek().text === '#' && node.kind === 'reference')
        node = this.references.spillOf(node);
      else break;
      this.tokens.take();
    }
    return node;
  }

  private primary(): Node {
    const token = this.tokens.take();
    switch (token.kind) {
      case 'number':
        return this.tokens.peek().text === ':'
          ? this.reference(token)
          : { kind: 'number', value: Number(token.text) };
      case 'text':
        return { kind: 'text', value: token.text.slice(1, -1).replace(/""/g, '"') };
      case 'error':
        return { kind: 'error', code: token.text.toUpperCase() };
      case 'open':
        return this.group();
      case 'openArray':
        return this.arrayLiteral();
      case 'function':
        return this.call(token.text);
      case 'word':
      case 'sheet':
      case 'bracket':
        return this.reference(token);
      default:
        this.tokens.back();
        return this.tokens.stop();
    }
  }

  private group(): Node {
    const node = this.expression(0);
    while (this.tokens.peek().kind === 'separator') {
      this.tokens.take();
      this.expression(0);
      this.formula.unsupported ??= 'It uses several areas as one reference, which is not evaluated here.';
    }
    this.tokens.expect('close');
    return node;
  }

  private arrayLiteral(): Node {
    const rows: Node[][] = [[]];
    for (;;) {
      (rows.at(-1) as Node[]).push(this.unary());
      const { kind } = this.tokens.take();
      if (kind === 'closeArray') return { kind: 'array', rows };
      if (kind === 'rowSeparator') rows.push([]);
      else if (kind !== 'separator') this.tokens.stop();
    }
  }

  private reference(first: Token): Node {
    const node = this.references.read(
      first,
      () => this.tokens.take(),
      () => this.tokens.peek(),
    );
    const next = this.tokens.peek();
    if (next.spaced && ['word', 'sheet', 'bracket'].includes(next.kind)) {
      this.formula.unsupported ??= 'It uses the crossing of two ranges, which is not evaluated here.';
      this.reference(this.tokens.take());
    }
    return node;
  }

  private call(stored: string): Node {
    this.tokens.expect('open');
    const name = displayFunctionName(stored, this.scope.namespace);
    noteFunction(this.formula, name, this.scope);
    const args = this.args();
    if (name === 'SINGLE' && args.length === 1) return { kind: 'intersection', operand: args[0] as Node };
    const [only] = args;
    if (name === 'ANCHORARRAY' && only?.kind === 'reference') return this.references.spillOf(only);
    return { kind: 'call', name, args };
  }

  private args(): Node[] {
    const args: Node[] = [];
    if (this.tokens.peek().kind === 'close') {
      this.tokens.take();
      return args;
    }
    for (;;) {
      const { kind } = this.tokens.peek();
      args.push(kind === 'separator' || kind === 'close' ? { kind: 'missing' } : this.expression(0));
      const next = this.tokens.take().kind;
      if (next === 'close') return args;
      if (next !== 'separator') {
        this.tokens.back();
        this.tokens.stop();
      }
    }
  }

  /** A defined name is read where it is used, as if its text stood there. */
  private inlineName(text: string, sheet: number): Node {
    if (this.nameDepth > 20) throw new FormulaSyntaxError('A defined name is defined by itself.');
    let node: Node = { kind: 'error', code: '#NAME?' };
    const place = { ...this.place, sheet, inName: true, shift: { rows: 0, columns: 0 } };
    new Parser(text, place, this.scope, this.formula, this.nameDepth + 1).parse((read) => (node = read));
    return node;
  }
}
