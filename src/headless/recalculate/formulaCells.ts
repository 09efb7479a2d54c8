import type { Workbook } from '../../xlsx/workbook.js';
import { cellKey } from '../../sheet/address.js';
import type { StoredFormula } from '../../xlsx/storedCells.js';
import type { Formula } from '../../sheet/formula/nodes.js';
import { type FormulaForm, FormulaForms } from '../../sheet/formula/forms.js';
import { type Away, notAway } from '../../sheet/formula/moves.js';
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
  /** Shared by all cells of its form; its references are seen from some way `away`. */
  formula: Formula;
  away: Away;
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
): { cells: FormulaCell[]; parses: number } {
  const cells: FormulaCell[] = [];
  const forms = new FormulaForms(scope);
  const pinOf = pinner(workbook, supported);
  const alike = sharer();
  workbook.sheets.forEach(({ cells: file }, sheet) => {
    file?.formulas.forEach((stored, i) => {
      if (!stored) return;
      const row = file.rows[i] as number;
      const column = file.columns[i] as number;
      if (isReplaced(sheet, cellKey(row, column))) return;
      const shift = { rows: row - stored.baseRow, columns: column - stored.baseColumn };
      const { form, away } = forms.read(stored.text, { sheet, row, column, shift });
      const { formula } = form;
      // Without a text of its own, what a formula reads is not known.
      if (stored.text === '') formula.dynamic = true;
      shareText(stored, form);
      const known = alike(stored, formula);
      file.formulas[i] = known;
      cells.push({
        sheet,
        row,
        column,
        stored: known,
        formula,
        away,
        pin: pinOf(formula, known),
        replaced: false,
      });
    });
  });
  return { cells, parses: forms.parses };
}

/** A text that was compared with that of its form need not be kept. */
function shareText(stored: StoredFormula, { text, row, column }: FormulaForm): void {
  stored.text = text;
  stored.baseRow = row;
  stored.baseColumn = column;
}

/** Of formulas of one form that each hold one value, those that are alike are kept once. */
function sharer(): (stored: StoredFormula, formula: Formula) => StoredFormula {
  const kept = new Map<Formula, Map<boolean, StoredFormula>>();
  return (stored, formula) => {
    if (stored.kind !== 'plain' || stored.ref || stored.shares) return stored;
    const ofForm = kept.get(formula) ?? new Map<boolean, StoredFormula>();
    kept.set(formula, ofForm);
    const known = ofForm.get(stored.cached);
    if (known && known.text === stored.text && known.baseRow === stored.baseRow) return known;
    ofForm.set(stored.cached, stored);
    return stored;
  };
}

/** Why formulas are pinned; told once for each form of those that hold one value. */
function pinner(
  workbook: CalculatedWorkbook,
  supported: ReadonlySet<string>,
): (formula: Formula, stored: StoredFormula) => string | undefined {
  const known = new Map<Formula, string | undefined>();
  return (formula, stored) => {
    if (stored.kind !== 'plain') return whyPinned(formula, stored, workbook, supported);
    if (!known.has(formula)) known.set(formula, whyPinned(formula, stored, workbook, supported));
    return known.get(formula);
  };
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
      alone: true,
      ownRow: false,
      movingRows: 0,
    },
    away: notAway,
    pin: undefined,
    replaced: true,
  };
}
