/** Of the widest letters used; the font is the host's. */
const widthPerLetter = 7.2;
const padding = 10;

export const rowHeight = 22;

export const labelWidth = (text: string) => text.length * widthPerLetter + padding;

/** Labels in rows beside the part, row 0 next to it: none lies over another, and all stay in the drawing. */
export class Band {
  private readonly rows: [number, number][][] = [];

  constructor(private readonly width: number) {}

  /** The row of a label and the middle of its text, as near to x as the drawing lets it. */
  place(x: number, text: string): { x: number; row: number } {
    const half = labelWidth(text) / 2;
    const middle = Math.max(half, Math.min(x, this.width - half));
    const free = this.rows.findIndex((taken) =>
      taken.every(([from, to]) => middle + half <= from || middle - half >= to),
    );
    const row = free < 0 ? this.rows.length : free;
    (this.rows[row] ??= []).push([middle - half, middle + half]);
    return { x: middle, row };
  }

  get height(): number {
    return this.rows.length * rowHeight;
  }
}
