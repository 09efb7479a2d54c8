import type { CellValue } from '../core/quantity/cellValue.js';
import type { Area } from './area.js';

/** Cells by where they are, by the table or name they belong to, or all a sheet uses. */
export type Place =
  | Area
  | { table: string; part?: 'all' | 'headings' | 'data' }
  | { name: string }
  | { usedOf: string };

/** What can be read of cells. */
export interface Cells {
  /** Constants and results; null for blanks, error cells as their code: `#N/A`. */
  values: CellValue[][];
  /** Formulas, and null where a cell holds a constant: text that looks like a formula is none. */
  formulas: (string | null)[][];
  /** Number formats as the host writes them in English: `General`, `@`. */
  formats: string[][];
  /** What the cells show. */
  text: string[][];
}
export type Aspect = keyof Cells;
export type CellsRead<A extends Aspect> = Pick<Cells, A> & { area: Area };

/** What of some cells their values do not say. */
export interface Arrangement {
  /** Merged cells that reach into them, each area whole. */
  merged: Area[];
  /** Rows of the sheet, from 0, that are hidden or filtered out. */
  hidden: number[];
}

export interface Sheet {
  name: string;
  visible: boolean;
  protected: boolean;
}

export interface Table {
  name: string;
  /** With its headings and its total row. */
  area: Area;
  headings: string[];
  hasTotals: boolean;
}

export interface DefinedName {
  name: string;
  /** The formula behind the name: `=Shop!$B$2`. */
  refersTo: string;
}
