import type { CellValue } from '../../core/quantity/cellValue.js';
import type { Area } from '../../workbook/area.js';

/** An argument of a call: as written, its cells, and where they are where that is known. */
export interface SubjectArgument {
  written: string;
  values: CellValue[][];
  area?: Area;
}

/** What the selected cell is about. */
export type Subject =
  /** A row of a parts list, with its headings. */
  | { kind: 'row'; headings: CellValue[]; cells: CellValue[]; area: Area }
  /** A call of another function of ours, and what its cell shows. */
  | { kind: 'call'; name: string; arguments: SubjectArgument[]; cell: Area; shown: string }
  /** A call that cannot be shown, and why. */
  | { kind: 'unclear'; message: string; cell: Area }
  | { kind: 'nothing' };
