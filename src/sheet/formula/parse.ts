import { displayFunctionName } from './functionNames.js';
import { noFunctions, noteFunction } from './calledFunctions.js';
import { TokenCursor } from './tokenCursor.js';
import { FormulaSyntaxError, tokenize, type Token } from './tokens.js';
import type { Formula, Node } from './nodes.js';
import { ReferenceReader, type Place } from './referenceReader.js';
import { spendWork, type Scope } from './scope.js';

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
/** The host takes 8,192 characters as people see them; files store names of functions with what stands before them. */
const longestFormula = 32_767;
/** Values and references of one formula, those of the names it uses included. */
const mostNodes = 10_000;
/** A value or reference takes as much as reading this many characters. */
const workPerNode = 10;

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
    alone: false,
    ownRow: false,
    movingRows: 0,
  };
  const { rows, columns } = place.shift;
  const isShared = rows !== 0 || columns !== 0;
  const count = { nodes: 0 };
  new Parser(text, place, scope, { formula, count, isAgain: isShared }, 0).parse(
    (node) => (formula.node = node),
  );
  return formula;
}

/** What the texts of a formula and its names are read into. */
interface Reading {
  formula: Formula;
  count: { nodes: number };
  /** The text was read before: a shared formula's, or a name's. */
  isAgain: boolean;
}

const tooDeep = () => new FormulaSyntaxError('The formula is nested too deeply.');

class Parser {
  private tokens = new TokenCursor([]);
  private depth = 0;
  private readonly formula: Formula;
  private readonly references: ReferenceReader;

  constructor(
    private readonly text: string,
    private readonly place: Place,
    private readonly scope: Scope,
    private readonly reading: Reading,
    private readonly nameDepth: number,
  ) {
    const { formula } = reading;
    this.formula = formula;
    this.references = new ReferenceReader(place, scope, formula, (name, sheet) =>
      this.inlineName(name, sheet),
    );
  }

  parse(keep: (node: Node) => void): void {
    try {
      if (this.text.length > longestFormula)
        throw new FormulaSyntaxError('The formula is longer than 32,767 characters.');
      if (this.reading.isAgain) spendWork(this.scope, this.text.length);
      this.tokens = new TokenCursor(tokenize(this.text));
      keep(this.expression(0));
      if (this.tokens.peek().kind !== 'end') this.tokens.stop();
    } catch (error) {
      if (!(error instanceof FormulaSyntaxError)) throw error;
      this.formula.unsupported ??= error.message;
      // What follows was not read, so it may depend on anything.
      this.formula.dynamic = true;
      this.formula.alone = true;
    }
  }

  private expression(least: number): Node {
    this.enter();
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
      const operand = this.deeper(() => this.unary());
      return { kind: 'unary', operator: text, operand };
    }
    if (kind === 'operator' && text === '@') {
      this.tokens.take();
      return { kind: 'intersection', operand: this.deeper(() => this.unary()) };
    }
    let node = this.primary();
    for (let signs = 0; this.tokens.peek().kind === 'operator'; signs++) {
      if (signs > deepest) throw tooDeep();
      if (this.tokens.peek().text === '%') node = { kind: 'unary', operator: '%', operand: node };
      else if (this.tokens.peek().text === '#' && node.kind === 'reference')
        node = this.references.spillOf(node);
      else break;
      this.tokens.take();
    }
    return node;
  }

  private enter(): void {
    if (++this.depth > deepest) throw tooDeep();
  }

  private deeper<T>(read: () => T): T {
    this.enter();
    const result = read();
    this.depth--;
    return result;
  }

  private primary(): Node {
    if (this.reading.isAgain) spendWork(this.scope, workPerNode);
    if (++this.reading.count.nodes > mostNodes)
      throw new FormulaSyntaxError('The formula and its names hold more than 10,000 values and references.');
    const token = this.tokens.take();
    switch (token.kind) {
      case 'number':
        return this.tokens.peek().text === ':' ? this.reference(token) : this.number(token);
      case 'text':
        return { kind: 'text', value: token.text.slice(1, -1).replace(/""/g, '"') };
      case 'error':
        return { kind: 'error', code: token.text.toUpperCase() };
      case 'open':
        return this.group();
      case 'openArray':
        return this.deeper(() => this.arrayLiteral());
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

  /** A number that no cell can hold is refused, as the host refuses to take the formula. */
  private number({ text }: Token): Node {
    const value = Number(text);
    if (Number.isFinite(value)) return { kind: 'number', value };
    this.tokens.back();
    return this.tokens.stop();
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
      else if (kind !== 'separator') {
        this.tokens.back();
        this.tokens.stop();
      }
    }
  }

  private reference(first: Token): Node {
    const node = this.references.read(
      first,
      () => this.tokens.takeMore(),
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
    const reading = { ...this.reading, isAgain: true };
    new Parser(text, place, this.scope, reading, this.nameDepth + 1).parse((read) => (node = read));
    return node;
  }
}
