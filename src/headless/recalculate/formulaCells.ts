import type { Workbook } from '../../xlsx/workbook.js';
import { cellKey } from '../../sheet/address.js';
import type { StoredFormula } from '../../xlsx/storedCells.js';
import type { Formula } from '../../sheet/formula/nodes.js';
import { parseFormula } from '../../sheet/formula/parse.js';
import type { Scope } from '../../sheet/formula/scope.js';
import { whyPinned } from './pins.js';

/** What a calculation needs of a workbook: all but its package. */
export type CalculatedWorkbook = Omit<Workbook, 'package' | 'part'>;

/** A cell with a formula, or one whose content the caller replaced. */
export interface FormulaCell {
  sheet: number;
  row: number;
  column: number;
  stored: StoredFormula;
  formula: Formula;
  /** Why it keeps its value whatever happens; undefined when it can be evaluated. */
  pin: string | undefined;
  /** The caller replaced its content with a value. */
  replaced: boolean;
}

/** Reads every formula of a workbook, except those in cells the caller replaces. */
export function readFormulaCells(
  workbook: CalculatedWorkbook,
  scope: Scope,
  supported: ReadonlySet<string>,
  isReplaced: (sheet: number, key: number) => boolean,
): FormulaCell[] {
  const cells: FormulaCell[] = [];
  workbook.sheets.forEach(({ cells: file }, sheet) => {
    file?.formulas.forEach((stored, i) => {
      if (!stored) return;
      const row = file.rows[i] as number;
      const column = file.columns[i] as number;
      if (isReplaced(sheet, cellKey(row, column))) return;
      const shift = { rows: row - stored.baseRow, columns: column - stored.baseColumn };
      const formula = parseFormula(stored.text, { sheet, row, column, shift }, scope);
      // Without a text of its own, what a formula reads is not known.
      if (stored.text === '') formula.dynamic = true;
      const pin = whyPinned(formula, stored, workbook, supported);
      cells.push({ sheet, row, column, stored, formula, pin, replaced: false });
    });
  });
  return cells;
}

/** A cell that holds a value the caller gave it. */
export function replacedCell(sheet: number, row: number, column: number): FormulaCell {
  return {
    sheet,
    row,
    column,
    stored: { text: '', kind: 'plain', baseRow: row, baseColumn: column, cached: true },
    formula: {
      node: { kind: 'missing' },
      references: [],
      spills: [],
      functions: new Set(),
      ours: false,
      unsupported: undefined,
      dynamic: false,
    },
    pin: undefined,
    replaced: true,
  };
}
