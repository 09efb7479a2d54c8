import { type Area, readAddresses } from '../../../src/workbook/area.js';
import { HostFailure, type StoredCell, typed } from './typedText.js';

type Input = string | number | boolean | null;

/** The cells of one sheet. */
export class Grid {
  private readonly cells = new Map<string, StoredCell>();
  /** In points, by column. */
  readonly widths = new Map<number, number>();
  readonly merged: Area[] = [];
  readonly hiddenRows = new Set<number>();
  /** By cell; only where somebody has set one. */
  readonly alignments = new Map<string, string>();
  protected = false;
  /** Cells that may be written while the sheet is protected. */
  private readonly unlocked = new Set<string>();
  visible = true;

  constructor(
    readonly id: string,
    public name: string,
  ) {}

  at(row: number, column: number): StoredCell {
    return this.cells.get(`${row},${column}`) ?? { value: '', format: 'General' };
  }

  put(row: number, column: number, cell: StoredCell): void {
    this.cells.set(`${row},${column}`, cell);
  }

  enter(row: number, column: number, input: Input): void {
    if (input === null) return;
    const { format } = this.at(row, column);
    this.put(row, column, input === '' ? { value: '', format } : typed(input, format));
  }

  unlock({ row, column, rows, columns }: Area): void {
    for (let at = row; at < row + rows; at += 1)
      for (let across = column; across < column + columns; across += 1) this.unlocked.add(`${at},${across}`);
  }

  lockAll(): void {
    this.unlocked.clear();
  }

  /** As hosts do: writing over one locked cell refuses all of them, and tables and columns need the whole sheet. */
  refuseWhenProtected(cells?: Area): void {
    if (this.protected && !(cells && this.isUnlocked(cells))) throw new HostFailure('AccessDenied');
  }

  private isUnlocked({ row, column, rows, columns }: Area): boolean {
    for (let at = row; at < row + rows; at += 1)
      for (let across = column; across < column + columns; across += 1)
        if (!this.unlocked.has(`${at},${across}`)) return false;
    return true;
  }

  area(address: string): Area {
    const [area, ...more] = readAddresses(address, this.name);
    if (!area || more.length > 0) throw new HostFailure('InvalidArgument');
    return area;
  }

  rows<Value>({ row, column, rows, columns }: Area, of: (cell: StoredCell) => Value): Value[][] {
    return Array.from({ length: rows }, (_, down) =>
      Array.from({ length: columns }, (_, right) => of(this.at(row + down, column + right))),
    );
  }

  /** Undefined for a sheet on which no cell holds anything. */
  used(): Area | undefined {
    const held = [...this.cells].filter(([, { value, formula }]) => value !== '' || formula !== undefined);
    if (held.length === 0) return undefined;
    const places = held.map(([key]) => key.split(',').map(Number) as [number, number]);
    const row = Math.min(...places.map(([down]) => down));
    const column = Math.min(...places.map(([, right]) => right));
    return {
      sheet: this.name,
      row,
      column,
      rows: Math.max(...places.map(([down]) => down)) - row + 1,
      columns: Math.max(...places.map(([, right]) => right)) - column + 1,
    };
  }

  /** Moves what stands in some rows, from a column on, sideways. */
  shift(row: number, rows: number, fromColumn: number, by: 1 | -1): void {
    const moving = [...this.cells].flatMap(([key, cell]) => {
      const [down = 0, right = 0] = key.split(',').map(Number);
      return down >= row && down < row + rows && right >= fromColumn ? [{ key, down, right, cell }] : [];
    });
    for (const { key } of moving) this.cells.delete(key);
    for (const { down, right, cell } of moving) {
      if (by === 1 || right > fromColumn) this.put(down, right + by, cell);
    }
  }
}
