import { cellKey, MAX_COLUMNS, zoneSize, zonesMeet, type Zone } from '../../sheet/address.js';
import { refuseWorkbook } from '../../xlsx/refusal/refusal.js';
import type { FormulaCell } from './formulaCells.js';

const widest = 100_000;
const mostCovered = 4_000_000;
const mostWide = 100;

interface Column {
  rows: number[];
  ids: number[];
}

/** Which formula gives each cell its value: the formula in it, or the one that spills or fills over it. */
export class FormulaIndex {
  private readonly columns: Map<number, Column>[] = [];
  private covered = 0;
  /** Arrays too large to list cell by cell. */
  private readonly wide: { sheet: number; zone: Zone; id: number }[] = [];

  constructor(sheets: number, formulas: FormulaCell[], covers: (Zone | undefined)[]) {
    for (let sheet = 0; sheet < sheets; sheet++) this.columns.push(new Map());
    formulas.forEach(({ sheet, row, column }, id) => this.own(sheet, row, column, id));
    this.sort();
    const filled = this.columns.map(() => new Map<number, number>());
    formulas.forEach(({ sheet }, id) => {
      const zone = covers[id];
      if (zone) this.cover(sheet, zone, id, filled[sheet] ?? new Map());
    });
    filled.forEach((cells, sheet) => {
      for (const [key, id] of cells) this.own(sheet, Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS, id);
    });
    this.sort();
  }

  private cover(sheet: number, zone: Zone, id: number, filled: Map<number, number>): void {
    this.covered += zoneSize(zone);
    if (zoneSize(zone) > widest || this.covered > mostCovered) {
      this.wide.push({ sheet, zone, id });
      if (this.wide.length > mostWide)
        refuseWorkbook('The file is refused: its formulas claim to fill more than 4 million cells.');
      return;
    }
    for (let row = zone.top; row <= zone.bottom; row++) {
      for (let column = zone.left; column <= zone.right; column++) {
        const key = cellKey(row, column);
        if (this.listed(sheet, row, column) === undefined && !filled.has(key)) filled.set(key, id);
      }
    }
  }

  private own(sheet: number, row: number, column: number, id: number): void {
    const columns = this.columns[sheet];
    const listed = columns?.get(column) ?? { rows: [], ids: [] };
    if (listed.rows.length === 0) columns?.set(column, listed);
    listed.rows.push(row);
    listed.ids.push(id);
  }

  private sort(): void {
    for (const columns of this.columns) for (const column of columns.values()) sortColumn(column);
  }

  /** The formula behind one cell. */
  of(sheet: number, row: number, column: number): number | undefined {
    const id = this.listed(sheet, row, column);
    if (id !== undefined || this.wide.length === 0) return id;
    const zone = { top: row, bottom: row, left: column, right: column };
    return this.wide.find((one) => one.sheet === sheet && zonesMeet(one.zone, zone))?.id;
  }

  private listed(sheet: number, row: number, at: number): number | undefined {
    const column = this.columns[sheet]?.get(at);
    if (!column) return undefined;
    const { rows, ids } = column;
    // Most columns of formulas have no gap.
    const straight = row - (rows[0] as number);
    if (rows[straight] === row) return ids[straight];
    const found = firstAt(rows, row);
    return rows[found] === row ? ids[found] : undefined;
  }

  /** The columns of a zone that hold any formulas. */
  columnsWithin(sheet: number, { left, right }: Zone): number[] {
    const columns = this.columns[sheet];
    if (!columns) return [];
    if (columns.size < right - left + 1)
      return [...columns.keys()].filter((column) => column >= left && column <= right);
    return Array.from({ length: right - left + 1 }, (_, i) => left + i).filter((column) =>
      columns.has(column),
    );
  }

  /** The formulas whose arrays are too large to list cell by cell and reach into a zone. */
  wideWithin(sheet: number, zone: Zone): number[] {
    return this.wide.filter((one) => one.sheet === sheet && zonesMeet(one.zone, zone)).map(({ id }) => id);
  }

  /** The formulas behind some rows of a column. */
  inColumn(sheet: number, at: number, top: number, bottom: number): number[] {
    const column = this.columns[sheet]?.get(at);
    const found: number[] = [];
    if (!column) return found;
    for (
      let i = firstAt(column.rows, top);
      i < column.rows.length && (column.rows[i] as number) <= bottom;
      i++
    ) {
      const id = column.ids[i] as number;
      if (found.at(-1) !== id) found.push(id);
    }
    return found;
  }

  /** Whether any formula stands behind some rows of a column. */
  anyInColumn(sheet: number, at: number, top: number, bottom: number): boolean {
    const rows = this.columns[sheet]?.get(at)?.rows ?? [];
    return (rows[firstAt(rows, top)] ?? Infinity) <= bottom;
  }
}

function sortColumn(column: Column): void {
  let sorted = true;
  for (let i = 1; i < column.rows.length; i++)
    sorted &&= (column.rows[i - 1] as number) <= (column.rows[i] as number);
  if (sorted) return;
  const order = column.rows
    .map((_, i) => i)
    .sort((a, b) => (column.rows[a] as number) - (column.rows[b] as number));
  const { rows, ids } = column;
  column.rows = order.map((i) => rows[i] as number);
  column.ids = order.map((i) => ids[i] as number);
}

function firstAt(rows: number[], row: number): number {
  let low = 0;
  let high = rows.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((rows[middle] as number) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}
