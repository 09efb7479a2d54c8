import type { Area } from './area.js';

/** Cells read in one message: at 80 bytes each they stay below the 5 MB a browser host gives. */
export const cellsPerTrip = 50_000;

/** Rows of an area, read or written in one message. */
export interface Slice {
  area: Area;
  /** Which of several areas it is cut from. */
  of: number;
}

/** An area in slices of whole rows, each with at most so many cells, one row at least. */
export function rowSlices(area: Area, of: number, cells: number): Slice[] {
  const rows = Math.max(1, Math.floor(cells / Math.max(1, area.columns)));
  return Array.from({ length: Math.ceil(area.rows / rows) }, (_, at) => ({
    of,
    area: { ...area, row: area.row + at * rows, rows: Math.min(rows, area.rows - at * rows) },
  }));
}
