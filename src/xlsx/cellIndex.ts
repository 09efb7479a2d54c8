import { cellKey, MAX_COLUMNS } from '../sheet/address.js';

/**
 * Which of a sheet's cells stands where. Files list cells row by row and from left to right; then a row is looked up
 * and a cell found within it. Only where a file does not is each cell kept by its key.
 */
export class CellIndex {
  private readonly lines = new Map<number, number>();
  /** Where the cells of each line start. */
  private readonly firsts: number[] = [];
  private loose: Map<number, number> | undefined;
  private lastRow = -1;
  private lastColumn = -1;

  constructor(
    private readonly rows: readonly number[],
    private readonly columns: readonly number[],
  ) {}

  /** Adds the cell that comes next in the arrays; false where there is one at its place already. */
  add(row: number, column: number): boolean {
    const position = this.rows.length;
    if (!this.loose && (row < this.lastRow || (row === this.lastRow && column <= this.lastColumn)))
      this.loose = new Map(this.rows.map((each, at) => [cellKey(each, this.columns[at] as number), at]));
    if (this.loose) {
      const key = cellKey(row, column);
      if (this.loose.has(key)) return false;
      this.loose.set(key, position);
    } else if (row !== this.lastRow) {
      this.lines.set(row, this.firsts.length);
      this.firsts.push(position);
    }
    this.lastRow = row;
    this.lastColumn = column;
    return true;
  }

  get(key: number): number | undefined {
    return this.at(Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS);
  }

  has(key: number): boolean {
    return this.get(key) !== undefined;
  }

  /** The keys of all cells with their positions, in file order. */
  *[Symbol.iterator](): Generator<[number, number]> {
    for (let at = 0; at < this.rows.length; at++)
      yield [cellKey(this.rows[at] as number, this.columns[at] as number), at];
  }

  /** The position of a cell in the arrays. */
  at(row: number, column: number): number | undefined {
    if (this.loose) return this.loose.get(cellKey(row, column));
    const line = this.lines.get(row);
    if (line === undefined) return undefined;
    const straight = (this.firsts[line] as number) + column;
    if (this.columns[straight] === column && this.rows[straight] === row) return straight;
    const found = this.notBefore(line, column);
    return this.columns[found] === column && this.rows[found] === row ? found : undefined;
  }

  /** The neighbors of a cell that is not there: the one it comes before, or the last of its row. */
  placeOfNew(
    row: number,
    column: number,
  ): { before: number; after?: never } | { before?: never; after: number } | undefined {
    const line = this.loose ? undefined : this.lines.get(row);
    if (line === undefined) return undefined;
    const found = this.notBefore(line, column);
    return this.rows[found] === row ? { before: found } : { after: found - 1 };
  }

  /** The first cell of a line that is not left of a column; that after the line where there is none. */
  private notBefore(line: number, column: number): number {
    let low = this.firsts[line] as number;
    let high = this.firsts[line + 1] ?? this.columns.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.columns[middle] as number) < column) low = middle + 1;
      else high = middle;
    }
    return low;
  }
}
