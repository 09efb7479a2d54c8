import { zoneSize, type Zone } from '../../sheet/address.js';
import { cellSeen, zoneSeen } from '../../sheet/formula/moves.js';
import { refuseWorkbook } from '../../xlsx/refusal/refusal.js';
import type { FormulaCell } from './formulaCells.js';
import type { FormulaIndex } from './formulaIndex.js';

/** References of at most this many cells are followed cell by cell, larger ones are shared. */
const small = 24;
const mostEdges = 20_000_000;
/** What most formulas read of other formulas. */
const nothing: readonly number[] = [];
/** Rows of the smallest block of a column that ranges share. */
const blockRows = 64;

/**
 * Who reads whom. Nodes are the formulas (by number) and, after them, the larger ranges they read and the
 * blocks those are made of. A column is cut into blocks of 64, 128, 256 … rows, so that ten thousand
 * running totals over one column share a few hundred blocks instead of listing fifty million cells.
 */
export class Graph {
  /** For each node: the nodes it reads. */
  readonly reads: (readonly number[])[] = [];
  private edges = 0;
  private readonly shared = new Map<string, number>();
  private readonly named = new Map<number, { sheet: number; zone: Zone }>();

  constructor(
    formulas: FormulaCell[],
    private readonly formulaIndex: FormulaIndex,
  ) {
    for (let id = 0; id < formulas.length; id++) this.reads.push(nothing);
    const nodes: number[] = [];
    formulas.forEach((cell, id) => {
      nodes.length = 0;
      this.readsOf(cell, nodes);
      if (nodes.length > 0) this.reads[id] = nodes.slice();
      this.count(nodes);
    });
  }

  /** Formulas read a few cells each, and share what they read of larger ranges. */
  private count(nodes: readonly number[]): void {
    this.edges += nodes.length;
    if (this.edges > mostEdges)
      refuseWorkbook('The file is refused: its formulas refer to cells more than 20 million times.');
  }

  /** The range a node stands for; undefined for a formula. */
  rangeOf(node: number): { sheet: number; zone: Zone } | undefined {
    return this.named.get(node);
  }

  private readsOf({ formula, away }: FormulaCell, nodes: number[]): void {
    for (const reference of formula.references) {
      const { sheet } = reference;
      const zone = zoneSeen(reference, away);
      if (zoneSize(zone) > small) nodes.push(this.rangeNode(sheet, zone));
      else this.eachOwner(sheet, zone, nodes);
    }
    for (const spill of formula.spills) {
      const { row, column } = cellSeen(spill, away);
      const id = this.formulaIndex.of(spill.sheet, row, column);
      if (id !== undefined) nodes.push(id);
    }
  }

  private eachOwner(sheet: number, zone: Zone, nodes: number[]): void {
    for (let row = zone.top; row <= zone.bottom; row++) {
      for (let column = zone.left; column <= zone.right; column++) {
        const id = this.formulaIndex.of(sheet, row, column);
        if (id !== undefined) nodes.push(id);
      }
    }
  }

  private rangeNode(sheet: number, zone: Zone): number {
    return this.node(
      `${sheet}:${zone.top}:${zone.left}:${zone.bottom}:${zone.right}`,
      { sheet, zone },
      (nodes) => {
        for (const column of this.formulaIndex.columnsWithin(sheet, zone)) {
          this.columnPart(sheet, column, zone.top, zone.bottom, nodes);
        }
        for (const id of this.formulaIndex.wideWithin(sheet, zone)) nodes.push(id);
      },
    );
  }

  /** Some rows of a column: whole blocks, and the cells before the first and after the last of them. */
  private columnPart(sheet: number, column: number, top: number, bottom: number, nodes: number[]): void {
    let row = top;
    while (row <= bottom) {
      if (row % blockRows !== 0 || row + blockRows - 1 > bottom) {
        const end = Math.min(bottom, row - (row % blockRows) + blockRows - 1);
        for (const id of this.formulaIndex.inColumn(sheet, column, row, end)) nodes.push(id);
        row = end + 1;
        continue;
      }
      let size = blockRows;
      while (row % (size * 2) === 0 && row + size * 2 - 1 <= bottom) size *= 2;
      if (this.formulaIndex.anyInColumn(sheet, column, row, row + size - 1))
        nodes.push(this.block(sheet, column, row, size));
      row += size;
    }
  }

  private block(sheet: number, column: number, top: number, size: number): number {
    const zone = { top, bottom: top + size - 1, left: column, right: column };
    return this.node(`${sheet}:${column}:${top}:${size}`, { sheet, zone }, (nodes) => {
      if (size === blockRows) {
        for (const id of this.formulaIndex.inColumn(sheet, column, top, zone.bottom)) nodes.push(id);
        return;
      }
      const half = size / 2;
      for (const start of [top, top + half]) {
        if (this.formulaIndex.anyInColumn(sheet, column, start, start + half - 1))
          nodes.push(this.block(sheet, column, start, half));
      }
    });
  }

  private node(key: string, range: { sheet: number; zone: Zone }, fill: (nodes: number[]) => void): number {
    const known = this.shared.get(key);
    if (known !== undefined) return known;
    const nodes: number[] = [];
    const node = this.reads.push(nodes) - 1;
    this.shared.set(key, node);
    this.named.set(node, range);
    fill(nodes);
    this.count(nodes);
    return node;
  }
}
