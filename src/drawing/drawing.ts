/*
 * Drawings as data, before anything is on the screen: lines by their meaning, texts, marks. `part` draws a
 * part on its press, `capacity` what a press can punch, `stock` how a bar is cut.
 */

/** Line meanings of ISO 128, and the two bars of the press table. */
export type Line =
  /** Visible outlines. */
  | 'outline'
  /** Dimensions, extension lines, ticks. */
  | 'thin'
  /** Edges behind. */
  | 'hidden'
  /** Center lines. */
  | 'center'
  /** The fence and the governing dimension. */
  | 'heavy';

/** Fills that stay apart in black and white. */
export type Fill = 'solid' | 'paper' | 'stipple' | 'hatch' | 'cross';

export type Shape =
  | { kind: 'line'; path: string; line: Line; dash?: string }
  | { kind: 'area'; path: string; fill: Fill; line?: Line }
  | {
      kind: 'text';
      x: number;
      y: number;
      text: string;
      anchor?: 'start' | 'middle' | 'end';
      strong?: boolean;
      /** Reads upward: turned about its place. */
      turned?: true;
      /** A box around it, or bare paper behind it so that lines do not cross it. */
      behind?: 'box' | 'paper';
    };

/** Something a reader can go to with the arrow keys: where it is, and what it says. */
export interface Point {
  x: number;
  y: number;
  label: string;
}

export interface FactTable {
  headings: string[];
  rows: string[][];
}

/** A drawing as data: shapes in pixels, and the same facts as a sentence, as points and as a table. */
export interface Drawing {
  title: string;
  /** One sentence. */
  summary: string;
  width: number;
  height: number;
  shapes: Shape[];
  /** What stands below it in words: how it is not to scale, what has no room in it. */
  notes?: string[];
  /** How the part lies, seen from its end. */
  end?: { width: number; height: number; shapes: Shape[]; words: string };
  points: Point[];
  table: FactTable;
}

/** A drawing, or the sentence that says why there is none. */
export type Drawn = Drawing | { problem: string };
