import { cellAddress, sameZone, zoneAddress, zoneSize, type Zone } from '../../sheet/address.js';
import { sameStored } from '../../sheet/cellValue.js';
import type { Formula } from '../../sheet/formula/nodes.js';
import type { Evaluator } from '../engine/evaluate.js';
import type { Work } from '../engine/work.js';
import type { Setting } from '../engine/setting.js';
import { CannotCompute, Waiting } from '../engine/values.js';
import { difference } from './compare.js';
import type { FormulaCell } from './formulaCells.js';
import type { Graph } from './graph.js';
import type { Grids, SheetGrid } from './sheetGrid.js';
import type { CalculationOrder } from './calculationOrder.js';
import { place, placementOf, zoneOfCell } from './spill.js';

/** It hangs on one of our functions, on a changed cell or on a cell without a value. */
const HANGS = 1;
const CHANGED = 2;
/** It keeps a value that may no longer be right. */
const STALE = 4;
/** It waits for a result that comes later. */
const WAITING = 8;
/** The file has no value for it. */
const VALUELESS = 16;

/** What a calculation runs on. */
interface CalculationInput {
  cells: FormulaCell[];
  sheetNames: string[];
  graph: Graph;
  order: CalculationOrder;
  grids: Grids;
  now: Evaluator;
  file: Evaluator;
  work: Work;
  /** Where each formula spills to now; written here. */
  zones: (Zone | undefined)[];
  /** The cells each array formula is known to fill: dependencies were followed through these. */
  covers: (Zone | undefined)[];
  /** Whether the file's value in a cell came from this formula's spill. */
  owns(id: number, key: number): boolean;
  /** Formulas that find out what they read when calculated count as reading something that changed. */
  anythingChanged: boolean;
}

/** One walk over the formulas in calculation order; keeps why cells were left as they are. */
export class Calculation {
  readonly flags: Uint8Array;
  readonly calculated: Set<number>;
  readonly pinned: Map<number, string>;
  readonly stale: Map<number, string>;
  /** Formulas whose results reached beyond the cells they were known to fill. */
  readonly outgrown = new Set<number>();
  /** A result could not spill, since something is in its way. */
  blocked = false;
  /** The nodes that are walked; all of them where there was no walk before. */
  private readonly due: Uint8Array | undefined;

  /** After a walk `before`, only what is due is walked again. */
  constructor(
    private readonly input: CalculationInput,
    again?: { before: Calculation; due: Uint8Array },
  ) {
    const before = again?.before;
    this.flags = new Uint8Array(input.graph.reads.length);
    this.calculated = before?.calculated ?? new Set();
    this.pinned = before?.pinned ?? new Map();
    this.stale = before?.stale ?? new Map();
    if (!again) return;
    this.due = again.due;
    this.flags.set(again.before.flags.subarray(0, input.cells.length));
    for (let id = 0; id < input.cells.length; id++) if (this.due[id]) this.reset(id);
  }

  /** Puts back what the file has where a formula of one value put its result. */
  private reset(id: number): void {
    const { sheet, row, column } = this.input.cells[id] as FormulaCell;
    const grid = this.input.grids[sheet];
    if (this.calculated.delete(id)) grid?.set(row, column, grid.fileValue(row, column));
    this.flags[id] = 0;
    this.pinned.delete(id);
    this.stale.delete(id);
  }

  get anythingChanged(): boolean {
    return this.input.anythingChanged;
  }

  get changed(): boolean {
    return this.flags.some((flag) => flag & CHANGED);
  }

  get waits(): boolean {
    return this.flags.some((flag) => flag & WAITING);
  }

  /** Walks all formulas, or only those that wait. */
  run(onlyWaiting: boolean): void {
    const { order, cells } = this.input;
    for (const node of order.order) {
      const isFormula = node < cells.length;
      if (isFormula && this.due && !this.due[node]) continue;
      if (onlyWaiting && !((this.flags[node] as number) & WAITING)) continue;
      const inputs = this.inputsOf(node);
      this.flags[node] = isFormula ? this.settle(node, inputs) : inputs;
    }
  }

  private inputsOf(node: number): number {
    let inputs = 0;
    for (const read of this.input.graph.reads[node] as number[]) inputs |= this.flags[read] as number;
    return inputs;
  }

  private settle(id: number, inputs: number): number {
    const cell = this.input.cells[id] as FormulaCell;
    if (cell.replaced) return HANGS | (this.replacedChanged(cell) ? CHANGED : 0);
    const mustCompute = cell.formula.ours || !cell.stored.cached;
    const dynamic = cell.formula.dynamic && this.input.anythingChanged;
    if (!mustCompute && !dynamic && !(inputs & HANGS)) return 0;
    const flags = HANGS | (cell.stored.cached ? 0 : VALUELESS);
    if (inputs & WAITING) return flags | WAITING;
    const touched = mustCompute || dynamic || (inputs & (CHANGED | STALE)) !== 0;
    const circular = this.input.order.circular[id] ? 'It is part of a circular reference.' : undefined;
    const why = circular ?? cell.pin;
    if (why !== undefined) return flags | this.keep(id, why, touched);
    if (inputs & STALE) return flags | this.keepStale(id);
    return flags | this.attempt(id, cell, mustCompute, inputs);
  }

  private replacedChanged({ sheet, row, column }: FormulaCell): boolean {
    const grid = this.input.grids[sheet] as SheetGrid;
    return !sameStored(grid.fileValue(row, column), grid.value(row, column));
  }

  private attempt(id: number, cell: FormulaCell, mustCompute: boolean, inputs: number): number {
    const touched = mustCompute || (inputs & CHANGED) !== 0;
    const { work } = this.input;
    work.begin();
    try {
      if (cell.stored.ref) work.spend(5 * zoneSize(cell.stored.ref));
      const mismatch = mustCompute || inputs & VALUELESS ? undefined : this.mismatch(cell);
      if (mismatch !== undefined) return this.keep(id, mismatch, touched);
      return touched ? this.compute(id, cell) : 0;
    } catch (error) {
      if (error instanceof Waiting) return WAITING;
      if (error instanceof CannotCompute) return this.keep(id, error.message, touched);
      throw error;
    }
  }

  private compute(id: number, cell: FormulaCell): number {
    const { grids, now, owns, zones } = this.input;
    const grid = grids[cell.sheet] as SheetGrid;
    const result = now.evaluate(cell.formula.node, setting(cell));
    const owned = (key: number) => owns(id, key);
    const placement = placementOf(cell, result, grids, owned);
    if (placement.isBlocked) this.blocked = true;
    const before = cell.stored.ref ?? zoneOfCell(cell);
    const changed = place(grid, placement, before, owned);
    this.calculated.add(id);
    if (cell.stored.kind !== 'dynamic') return changed ? CHANGED : 0;
    zones[id] = placement.zone;
    if (!holdsZone(this.input.covers[id] ?? zoneOfCell(cell), placement.zone)) this.outgrown.add(id);
    return changed || !sameZone(before, placement.zone) ? CHANGED : 0;
  }

  private mismatch(cell: FormulaCell): string | undefined {
    const result = this.input.file.evaluate(cell.formula.node, setting(cell));
    const placement = placementOf(cell, result, this.input.grids, () => true);
    if (cell.stored.kind === 'dynamic' && cell.stored.ref && !sameZone(placement.zone, cell.stored.ref)) {
      return `With the same inputs it fills ${zoneAddress(placement.zone)} here, but ${zoneAddress(cell.stored.ref)} in the file.`;
    }
    return difference(this.input.grids[cell.sheet] as SheetGrid, placement);
  }

  private keep(id: number, why: string, touched: boolean): number {
    this.pinned.set(id, why);
    if (!touched) return 0;
    this.stale.set(id, why);
    return STALE;
  }

  private keepStale(id: number): number {
    const reads = this.input.graph.reads[id] as number[];
    const source = reads.find((read) => (this.flags[read] as number) & STALE) as number;
    this.stale.set(id, `It depends on ${this.nameOf(source)}, which keeps its value.`);
    return STALE;
  }

  private nameOf(node: number): string {
    const range = this.input.graph.rangeOf(node);
    if (range) return `${this.input.sheetNames[range.sheet]}!${zoneAddress(range.zone)}`;
    const { sheet, row, column } = this.input.cells[node] as FormulaCell;
    return `${this.input.sheetNames[sheet]}!${cellAddress(row, column)}`;
  }
}

interface DueInput {
  graph: Pick<Graph, 'reads'>;
  order: CalculationOrder;
  cells: readonly { formula: Pick<Formula, 'dynamic'> }[];
  anythingChanged: boolean;
}

/** The nodes that hang on a result that reached farther, or on a formula that finds out what it reads. */
export function dueNodes(
  { graph, order, cells, anythingChanged }: DueInput,
  before: Pick<Calculation, 'outgrown' | 'anythingChanged'>,
): Uint8Array {
  const { outgrown, anythingChanged: wasChanged } = before;
  const due = new Uint8Array(graph.reads.length);
  const isDue = (node: number) =>
    (anythingChanged && !wasChanged && cells[node]?.formula.dynamic) ||
    (graph.reads[node] as number[]).some((read) => due[read] || outgrown.has(read));
  const circleOf = (at: number) => order.circular[order.order[at] as number];
  for (let at = 0, end = 0; at < order.order.length; at = end) {
    end = at + 1;
    // In a circle, each hangs on all.
    while (circleOf(at) !== 0 && circleOf(end) === circleOf(at)) end++;
    const nodes = order.order.subarray(at, end);
    if (nodes.some(isDue)) for (const node of nodes) due[node] = 1;
  }
  return due;
}

const setting = (cell: FormulaCell): Setting => ({
  sheet: cell.sheet,
  row: cell.row,
  column: cell.column,
  plain: cell.stored.kind === 'plain',
  ours: cell.formula.ours,
  away: cell.away,
});

const holdsZone = (outer: Zone, inner: Zone) =>
  outer.top <= inner.top &&
  outer.left <= inner.left &&
  outer.bottom >= inner.bottom &&
  outer.right >= inner.right;
