import { CompiledFormula } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Cell, CellPosition, Model, UID } from '@odoo/o-spreadsheet';
import { type FormulaPlace, updateReferences } from './updateReferences.js';
import type { Scope } from '../../sheet/formula/scope.js';

type FormulaCell = Extract<Cell, { isFormula: true }>;

/** A formula as it was typed, and as it read when it was last asked for. */
interface Typed {
  display: string;
  read?: { compiled: FormulaCell['compiledFormula']; revision: number; shown: string };
}

/** A formula with the engine's form that it should have. */
export interface OutgrownFormula {
  display: string;
  engine: string;
  position: CellPosition;
}

/** What is asked of the book that the formulas stand in. */
interface Surroundings {
  readonly getters: Model['getters'];
  readonly tables: { readonly revision: number };
  scope(): Scope;
  placeOf(position: CellPosition): FormulaPlace;
  isNamed(formula: string): boolean;
  isKept(position: CellPosition): boolean;
  named(formula: string): string;
  translate(formula: string, position: CellPosition): string | undefined;
}

/** Formulas as people write them, by the engine's own numbers for their cells. */
export class TypedFormulas {
  private readonly typed = new Map<string, Typed>();

  constructor(private readonly book: Surroundings) {}

  set(display: string, position: CellPosition): void {
    const cell = this.book.getters.getCell(position);
    if (!cell?.isFormula) return;
    const { compiledFormula: compiled } = cell;
    const read = { compiled, revision: this.book.tables.revision, shown: display };
    this.typed.set(keyOf(position.sheetId, cell), { display, read });
  }

  /** Formulas over tables that no longer come to the cells the tables have now. */
  outgrown(): OutgrownFormula[] {
    const { getters } = this.book;
    return [...this.typed].flatMap(([key, { display }]) => {
      if (!display.includes('[') && !this.book.isNamed(display)) return [];
      const position = getters.tryGetCellPosition(Number(key.slice(key.lastIndexOf(' ') + 1)));
      const cell = position && getters.getCell(position);
      if (!position || !cell?.isFormula || keyOf(position.sheetId, cell) !== key) return [];
      if (this.book.isKept(position)) return [];
      const shown = this.formula(position) ?? '';
      const now = this.book.translate(shown, position);
      if (now === undefined || this.isSame(now, cell, position)) return [];
      return [{ display: shown, engine: now, position }];
    });
  }

  private engineFormula(cell: FormulaCell): string {
    return cell.compiledFormula.toFormulaString(this.book.getters);
  }

  /** Whether the engine's form of a formula is what a cell holds. */
  private isSame(formula: string, cell: FormulaCell, { sheetId }: CellPosition): boolean {
    const { getters } = this.book;
    const engine = this.engineFormula(cell);
    if (squeezed(formula) === squeezed(engine)) return true;
    // The engine writes numbers and the names of cells in its own way.
    return CompiledFormula.Compile(formula, sheetId, getters).toFormulaString(getters) === engine;
  }

  /** The formula in a cell as people write it; undefined where it holds a constant. */
  formula(position: CellPosition): string | undefined {
    const cell = this.book.getters.getCell(position);
    if (!cell?.isFormula) return undefined;
    const typed = this.typed.get(keyOf(position.sheetId, cell));
    if (!typed) return this.book.named(this.engineFormula(cell));
    const { compiledFormula: compiled } = cell;
    const { revision } = this.book.tables;
    if (typed.read?.compiled !== compiled || typed.read.revision !== revision)
      typed.read = { compiled, revision, shown: this.shown(typed.display, cell, position) };
    return typed.read.shown;
  }

  /** What was typed, as far as it still means the cells that the engine has: headings may have been renamed. */
  private shown(display: string, cell: FormulaCell, position: CellPosition): string {
    if (this.book.isKept(position)) return display;
    if (this.isSame(this.book.translate(display, position) ?? display, cell, position)) return display;
    const engine = this.book.named(this.engineFormula(cell));
    return updateReferences(display, engine, this.book.placeOf(position), this.book.scope()) ?? engine;
  }
}

const keyOf = (sheetId: UID, cell: Cell) => `${sheetId} ${cell.id}`;

const squeezed = (formula: string) => formula.replaceAll(' ', '');
