import type { Zone } from '../../xlsx';
import type { FormulaCell } from './formulaCells';
import type { Owners } from './owners';

/** References of at most this many cells are followed cell by cell, larger ones are shared. */
const small = 24;

/**
 * Who reads whom. Nodes are the formulas (by number) and, after them, the larger ranges they read, each
 * once however many formulas read it.
 */
export class Graph {
  readonly ranges: { sheet: number; zone: Zone }[] = [];
  private readonly rangeNodes = new Map<string, number>();
  /** For each formula: the nodes it reads. */
  readonly reads: number[][];

  constructor(
    private readonly formulas: FormulaCell[],
    private readonly owners: Owners,
  ) {
    this.reads = formulas.map((cell) => this.readsOf(cell));
    for (let i = 0; i < this.ranges.length; i++) {
      const { sheet, zone } = this.ranges[i] as { sheet: number; zone: Zone };
      this.reads.push(this.owners.within(sheet, zone));
    }
  }

  /** The range a node stands for; undefined for a formula. */
  rangeOf(node: number): { sheet: number; zone: Zone } | undefined {
    return this.ranges[node - this.formulas.length];
  }

  private readsOf({ formula }: FormulaCell): number[] {
    const nodes: number[] = [];
    for (const { sheet, zone } of formula.references) {
      const size = (zone.bottom - zone.top + 1) * (zone.right - zone.left + 1);
      if (size > small) nodes.push(this.rangeNode(sheet, zone));
      else this.eachOwner(sheet, zone, nodes);
    }
    for (const { sheet, row, column } of formula.spills) {
      const id = this.owners.of(sheet, row, column);
      if (id !== undefined) nodes.push(id);
    }
    return nodes;
  }

  private eachOwner(sheet: number, zone: Zone, nodes: number[]): void {
    for (let row = zone.top; row <= zone.bottom; row++) {
      for (let column = zone.left; column <= zone.right; column++) {
        const id = this.owners.of(sheet, row, column);
        if (id !== undefined) nodes.push(id);
      }
    }
  }

  private rangeNode(sheet: number, zone: Zone): number {
    const key = `${sheet}:${zone.top}:${zone.left}:${zone.bottom}:${zone.right}`;
    let node = this.rangeNodes.get(key);
    if (node === undefined) {
      node = this.formulas.length + this.ranges.length;
      this.ranges.push({ sheet, zone });
      this.rangeNodes.set(key, node);
    }
    return node;
  }
}
