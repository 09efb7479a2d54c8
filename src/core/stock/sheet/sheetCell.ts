/*
 * A sheet that is to be written, as data: cells with what they are, so that who writes them knows how to show them.
 * Numbers are in the unit of the shop.
 */

/** What a cell is; `text` is written as text, whatever it looks like. */
export type SheetCell =
  | null
  | { kind: 'title' | 'heading' | 'text'; value: string }
  | { kind: 'count' | 'length' | 'mass' | 'money' | 'share' | 'angle'; value: number };

export type SheetRow = readonly SheetCell[];

export interface SheetContent {
  /** The name it would have; whoever writes it finds a free one. */
  name: string;
  rows: readonly SheetRow[];
  /** Widths of the columns in characters. */
  widths: readonly number[];
}
