import { labelWidth } from '../labelWidth.js';

/** Labels in rows beside the part, row 0 next to it: none lies over another, and all stay in the drawing. */
export class Band {
  private readonly rows: [number, number][][] = [];

  /** The width of the drawing, and how much at the left of row 0 is not free. */
  constructor(
    private readonly width: number,
    private readonly taken = 0,
  ) {}

  /** The row of a label and the middle of its text, as near to x as the drawing lets it. */
  place(x: number, text: string): { x: number; row: number } {
    const half = labelWidth(text) / 2;
    const middle = Math.max(half, Math.min(x, this.width - half));
    let row = 0;
    while (!this.isFree(row, middle - half, middle + half)) row += 1;
    for (let at = this.rows.length; at <= row; at += 1) this.rows.push([]);
    this.rows[row]?.push([middle - half, middle + half]);
    return { x: middle, row };
  }

  private isFree(row: number, left: number, right: number): boolean {
    if (row === 0 && left < this.taken) return false;
    return (this.rows[row] ?? []).every(([from, to]) => right <= from || left >= to);
  }

  /** How many rows are taken. */
  get count(): number {
    return this.rows.length;
  }
}
