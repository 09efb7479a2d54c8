import type { Zone } from '../../sheet/address.js';
import { cellSeen, zoneSeen } from '../../sheet/formula/moves.js';
import type { Node } from '../../sheet/formula/nodes.js';
import { argumentAt, takesRange } from './arguments.js';
import { newSearchCaches, type NativeFunctions, type SearchCaches } from './engine.js';
import { applyOperator, applySign, broadcast } from './operators.js';
import type { OurFunctions } from './ourFunctions.js';
import { completeArguments } from './hostArguments.js';
import { referenceFunctions } from './referenceFunctions.js';
import { RunningTotals } from './runningTotals.js';
import type { Setting } from './setting.js';
import type { Work } from './work.js';
import { readSubtotal } from './subtotal.js';
import {
  CannotCompute,
  failure,
  isMatrix,
  topLeft,
  type Matrix,
  type Operand,
  type Values,
} from './values.js';

/*
 * Formulas are evaluated here, as the host does it. Native functions come from the engine package, one at a
 * time; operators, references, arrays, spills and errors are ours.
 */

/** Ranges whose search index is kept. */
const mostSearched = 100;

/** Functions whose arguments are arrays even in a cell that holds one value. */
const arrayFunctions = new Set([
  'SUMPRODUCT',
  'MMULT',
  'MDETERM',
  'MINVERSE',
  'SUMX2MY2',
  'SUMX2PY2',
  'SUMXMY2',
]);

type Binary = Node & { kind: 'binary' };

/** Evaluates formulas over one state of the cells. */
export class Evaluator {
  private caches: SearchCaches = newSearchCaches();
  private readonly runningTotals: RunningTotals;

  constructor(
    readonly native: NativeFunctions,
    private readonly functions: OurFunctions,
    readonly values: Values,
    readonly work: Work,
  ) {
    this.runningTotals = new RunningTotals(values, work);
  }

  evaluate(node: Node, setting: Setting): Operand {
    const result = this.value(node, setting, false);
    const called = node.kind === 'call' && this.functions.find(node.name);
    if (setting.plain && isMatrix(result) && !called) {
      throw new CannotCompute('It gives several values in a cell that holds one.');
    }
    return result;
  }

  /** An operand; `asRange` when the place takes a whole range. */
  value(node: Node, setting: Setting, asRange: boolean): Operand {
    switch (node.kind) {
      case 'number':
      case 'text':
      case 'boolean':
        return { value: node.value };
      case 'error':
        return failure(node.code);
      case 'missing':
        return { value: null };
      case 'reference':
        return this.reference(node.sheet, zoneSeen(node, setting.away), setting, asRange);
      case 'spill': {
        const { row, column } = cellSeen(node, setting.away);
        return this.reference(node.sheet, this.values.spillZone(node.sheet, row, column), setting, asRange);
      }
      case 'intersection':
        return this.intersection(node.operand, setting);
      case 'binary':
        return this.chain(node, setting);
      case 'unary':
        return this.signed(node, setting);
      case 'array':
        return this.array(node.rows, setting);
      case 'call':
        return this.call(node.name, node.args, setting);
    }
  }

  private signed({ operator, operand }: Node & { kind: 'unary' }, setting: Setting): Operand {
    const value = this.value(operand, setting, false);
    this.spendOn(value);
    return broadcast(value, failure(''), (a) => applySign(operator, a));
  }

  /** Operators one after the other, without a step deeper for each of them. */
  private chain(last: Binary, setting: Setting): Operand {
    const links: Binary[] = [];
    let first: Node = last;
    for (; first.kind === 'binary'; first = first.left) links.push(first);
    let result = this.value(first, setting, false);
    for (const { operator, right } of links.reverse()) {
      const operand = this.value(right, setting, false);
      this.spendOn(result, operand);
      result = broadcast(result, operand, (a, b) => applyOperator(operator, a, b));
    }
    return result;
  }

  private spendOn(...operands: Operand[]): void {
    const sizes = operands.map((operand) =>
      isMatrix(operand) ? operand.length * (operand[0]?.length ?? 0) : 1,
    );
    this.work.spend(5 * sizes.reduce((size, one) => size * (one || 1), 1));
  }

  private reference(sheet: number, zone: Zone, setting: Setting, asRange: boolean): Operand {
    if (asRange) return this.values.range(sheet, zone);
    if (zone.top === zone.bottom && zone.left === zone.right)
      return this.values.cell(sheet, zone.top, zone.left);
    if (!setting.plain) return this.values.range(sheet, zone);
    if (!setting.ours) throw new CannotCompute('It uses the crossing of a range with its own row or column.');
    return this.crossing(sheet, zone, setting);
  }

  private crossing(sheet: number, zone: Zone, { row, column }: Setting): Operand {
    if (zone.left === zone.right && row >= zone.top && row <= zone.bottom)
      return this.values.cell(sheet, row, zone.left);
    if (zone.top === zone.bottom && column >= zone.left && column <= zone.right) {
      return this.values.cell(sheet, zone.top, column);
    }
    return failure('#VALUE!');
  }

  private intersection(operand: Node, setting: Setting): Operand {
    if (operand.kind === 'reference') {
      const zone = zoneSeen(operand, setting.away);
      return this.reference(operand.sheet, zone, { ...setting, plain: true }, false);
    }
    return topLeft(this.value(operand, setting, false));
  }

  private array(rows: Node[][], setting: Setting): Matrix {
    const width = rows[0]?.length ?? 0;
    return Array.from({ length: width }, (_, column) =>
      rows.map((row) => topLeft(this.value(row[column] ?? { kind: 'missing' }, setting, false))),
    );
  }

  private call(name: string, args: Node[], setting: Setting): Operand {
    const ours = this.functions.find(name);
    if (ours) {
      const operands = args.map((arg, i) =>
        arg.kind === 'missing' ? undefined : this.value(arg, setting, this.functions.takesRange(ours, i)),
      );
      this.work.spend(this.functions.workOfCall(ours, operands));
      return this.functions.call(ours, operands);
    }
    const special = referenceFunctions[name];
    const direct = special?.(args, setting) ?? this.runningTotals.call(name, args, setting);
    if (direct) return direct;
    if (name === 'SUBTOTAL') return this.subtotal(args, setting);
    const { engine } = this.native;
    const description = engine.describe(name);
    if (!description) throw new CannotCompute(`It uses ${name}, which is not evaluated here.`);
    if (this.caches.forwardSearch.size > mostSearched) this.caches = newSearchCaches();
    const inner = setting.plain && arrayFunctions.has(name) ? { ...setting, plain: false } : setting;
    const operands = args.map((arg, i) =>
      arg.kind === 'missing'
        ? undefined
        : this.value(arg, inner, takesRange(argumentAt(description, i, args.length))),
    );
    const result = engine.call(name, completeArguments(name, operands), this.caches, this.work);
    return isMatrix(result) && result.length === 1 && result[0]?.length === 1 ? topLeft(result) : result;
  }

  private subtotal([code, ...references]: Node[], setting: Setting): Operand {
    const read = this.value(code ?? { kind: 'missing' }, setting, false);
    const { summary, columns } = readSubtotal(topLeft(read), references, this.values, setting.away);
    return this.native.engine.call(summary, columns, this.caches, this.work);
  }
}
