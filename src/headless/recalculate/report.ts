import { cellAddress } from '../../sheet/address.js';
import { sheetPrefix } from '../../sheet/names.js';
import { isCellError, sameStored } from '../../sheet/cellValue.js';
import type { CalculatedWorkbook, FormulaCell } from './formulaCells.js';
import type { Grids, SheetGrid } from './sheetGrid.js';

export interface CellNote {
  /** `Quote!B4`. */
  cell: string;
  why: string;
}

export interface CellErrorNote {
  cell: string;
  code: string;
  message?: string;
}

/** What a recalculation did. */
export interface RecalcReport {
  sheets: { name: string; formulas: number; calculated: number; changed: number }[];
  /** Formulas that were evaluated and written, and stored values that changed. */
  calculated: number;
  changed: number;
  /** Formulas that hang on ours or on a changed cell, but are not evaluated here, and why. */
  pinned: CellNote[];
  /** Cells whose value may no longer be right, and why. */
  stale: CellNote[];
  /** Errors that calculated cells show. */
  errors: CellErrorNote[];
  milliseconds: { read: number; calculate: number; write: number; total: number };
}

/** What the report is made from. */
export interface Outcome {
  workbook: CalculatedWorkbook;
  cells: FormulaCell[];
  grids: Grids;
  calculated: ReadonlySet<number>;
  pinned: ReadonlyMap<number, string>;
  stale: ReadonlyMap<number, string>;
}

/** The report of a recalculation, without its times. */
export function makeReport(outcome: Outcome): Omit<RecalcReport, 'milliseconds'> {
  const { workbook, cells, grids } = outcome;
  const sheets = workbook.sheets.map(({ name }, sheet) => ({
    name,
    formulas: 0,
    calculated: 0,
    changed: changedIn(grids[sheet]),
  }));
  cells.forEach((cell, id) => {
    const sheet = sheets[cell.sheet];
    if (!sheet || cell.replaced) return;
    sheet.formulas++;
    if (outcome.calculated.has(id)) sheet.calculated++;
  });
  const name = (id: number) => nameOf(workbook, cells[id] as FormulaCell);
  const notes = (reasons: ReadonlyMap<number, string>) =>
    [...reasons].sort(([a], [b]) => a - b).map(([id, why]) => ({ cell: name(id), why }));
  return {
    sheets,
    calculated: outcome.calculated.size,
    changed: sheets.reduce((sum, { changed }) => sum + changed, 0),
    pinned: notes(outcome.pinned),
    stale: notes(outcome.stale),
    errors: [...outcome.calculated]
      .sort((a, b) => a - b)
      .flatMap((id) => errorOf(cells[id] as FormulaCell, grids, name(id))),
  };
}

function errorOf({ sheet, row, column }: FormulaCell, grids: Grids, cell: string): CellErrorNote[] {
  const value = grids[sheet]?.value(row, column) ?? null;
  if (!isCellError(value)) return [];
  return [
    value.message === undefined
      ? { cell, code: value.error }
      : { cell, code: value.error, message: value.message },
  ];
}

function changedIn(grid: SheetGrid | undefined): number {
  if (!grid) return 0;
  let changed = 0;
  grid.now.forEach((value, i) => {
    if (!sameStored(value, grid.file.values[i] ?? null)) changed++;
  });
  for (const value of grid.extra.values()) if (value !== null) changed++;
  return changed;
}

function nameOf(workbook: CalculatedWorkbook, { sheet, row, column }: FormulaCell): string {
  return `${sheetPrefix(workbook.sheets[sheet]?.name ?? '')}!${cellAddress(row, column)}`;
}
