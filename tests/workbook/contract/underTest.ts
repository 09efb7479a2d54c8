import type { Area } from '../../../src/workbook/area.js';
import type { Author } from '../../../src/workbook/change.js';
import type { Workbook } from '../../../src/workbook/port.js';

/** A cell as its keeper has it, past the port. */
export interface CellHeld {
  value: string | number | boolean;
  formula?: string;
  format: string;
}

/** What people do to the workbook in their own program, past the port. */
export interface Hands {
  addSheet(name: string): Promise<void>;
  /** Types into cells, with all that the program makes of typed text. */
  type(at: Area, rows: readonly (readonly (string | number | null)[])[]): Promise<void>;
  format(at: Area, format: string): Promise<void>;
  addTable(name: string, at: Area): Promise<void>;
  addName(name: string, at: Area): Promise<void>;
  merge(at: Area): Promise<void>;
  /** Hides rows, from 0. */
  hide(sheet: string, rows: readonly number[]): Promise<void>;
  /** The merged areas of a sheet. */
  merged(sheet: string): Area[];
  protect(sheet: string): Promise<void>;
  unprotect(sheet: string): Promise<void>;
  select(at: Area): Promise<void>;
  /** Changes one cell while others watch. */
  edit(at: Area, input: string | number, author: Author): Promise<void>;
  /** Recalculates cells while others watch. */
  calculate(at: Area): Promise<void>;
  look(sheet: string, row: number, column: number): CellHeld;
  /** How wide a column is, in characters to the next tenth; undefined for the usual width. */
  width(sheet: string, column: number): number | undefined;
}

export interface UnderTest {
  workbook: Workbook;
  hands: Hands;
}

/** Opens a workbook with one empty sheet, Parts. */
export type Open = () => Promise<UnderTest>;

export function areaAt(address: string, rows: number, columns: number, sheet = 'Parts'): Area {
  const [, letter = 'A', row = '1'] = /^([A-Z])(\d+)$/.exec(address) ?? [];
  return { sheet, row: Number(row) - 1, column: letter.charCodeAt(0) - 65, rows, columns };
}
