import { helpers, Model as EngineModel } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { CellPosition, Model, UID } from '@odoo/o-spreadsheet';
import { namesBySheet, type DefinedName, type Scope } from '../../sheet/formula/scope.js';
import { sheetPrefix } from '../../sheet/names.js';
import { zoneAddress, type Zone } from '../../sheet/address.js';
import type { StoredValue } from '../../sheet/cellValue.js';
import { isError, plainCode } from '../engine/errors.js';
import { isKeptFormula } from '../engine/keptFormula.js';
import { prepareEngine } from '../engine/prepareEngine.js';
import { showKeptFormulas } from '../engine/shownFormula.js';
import { UndoSteps } from '../engine/undoSteps.js';
import type { Dispatch } from '../engine/oneCommand.js';
import type { FormulaKeeper } from '../engine/typedFormulaPlugin.js';
import { constantOf, writtenFormat } from '../engine/cellContent.js';
import { engineSheetName, NotWritten, translateFormula } from './translate.js';
import { rangeOfName } from '../../sheet/formula/rangeOfName.js';
import { fillHeadings, rewriteOutgrown } from './repairTables.js';
import { TableNames } from './tableNames.js';
import { TypedFormulas } from './typedFormulas.js';

/*
 * What is open in the grid, in the words of a workbook: names of sheets and tables, formulas as people write
 * them, values and formats. The engine has forms of its own for most of these.
 */

/** What a book is made from. */
export interface BookContents {
  /** The engine's own form of a workbook. */
  data: Record<string, unknown>;
  sheets: { sheetId: string; name: string }[];
  tables: { sheetId: string; zone: Zone; name: string }[];
  /** All defined names; those that stand for a range live in the engine from then on. */
  names: readonly DefinedName[];
  namespace: string;
  /** Our functions' names, upper case. */
  ours: ReadonlySet<string>;
}

/** The engine's own number for: a command is being done. */
const running = 1;

type Transport = NonNullable<NonNullable<ConstructorParameters<typeof EngineModel>[1]>['transportService']>;

/** Formulas that the engine may not take as they are written. */
const needsTranslation = /[[@#\\_']|""/;

/** A workbook in the grid: the engine's model, and what the engine does not know of it. */
export class GridBook implements FormulaKeeper {
  readonly model: Model;
  readonly tables: TableNames;
  readonly steps: UndoSteps;
  private readonly typedFormulas = new TypedFormulas(this);
  private readonly sheetNames = new Map<UID, string>();
  private readonly otherNames: readonly DefinedName[];
  private tidied = -1;
  private sizes = '';
  private knownScope: { revision: number; scope: Scope } | undefined;

  /** @param transport carries changes to and from others who have the same workbook open */
  constructor(
    private readonly contents: BookContents,
    transport?: Transport,
  ) {
    prepareEngine();
    this.model = new EngineModel(
      { ...contents.data, version: helpers.createEmptyWorkbookData().version },
      { mode: 'normal', custom: { keeper: this }, ...(transport && { transportService: transport }) },
    );
    this.tables = new TableNames(this.model);
    this.steps = new UndoSteps(this.model);
    showKeptFormulas(this.model, this);
    for (const { sheetId, name } of contents.sheets) this.nameSheet(sheetId, name);
    for (const { sheetId, zone, name } of contents.tables) this.tables.give(sheetId, zone, name);
    this.otherNames = contents.names.filter(({ sheet, text }) => sheet !== undefined || !rangeOfName(text));
    this.sizes = this.tables.sizes();
  }

  get getters(): Model['getters'] {
    return this.model.getters;
  }

  sheetIdOf(name: string): UID | undefined {
    const wanted = engineSheetName(name).toLowerCase();
    return this.getters.getSheetIds().find((id) => this.getters.getSheetName(id).toLowerCase() === wanted);
  }

  /** The name of a sheet as the workbook has it; undefined for a sheet that is gone. */
  sheetName(id: UID): string | undefined {
    const shown = this.getters.tryGetSheetName(id);
    const given = this.sheetNames.get(id);
    return shown === undefined || given === undefined || engineSheetName(given) !== shown ? shown : given;
  }

  /** Keeps the name that a sheet was given. */
  nameSheet(id: UID, name: string): void {
    this.sheetNames.set(id, name);
    this.knownScope = undefined;
  }

  /** Where formulas find sheets, tables and names. */
  scope(): Scope {
    const { revision } = this.tables;
    if (this.knownScope?.revision !== revision) this.knownScope = { revision, scope: this.readScope() };
    return this.knownScope.scope;
  }

  private readScope(): Scope {
    return {
      sheets: this.getters.getSheetIds().map((id) => ({ name: this.sheetName(id) ?? '' })),
      tables: new Map(this.tables.all().map((table) => [table.name.toLowerCase(), table])),
      names: namesBySheet([...this.rangeNames(), ...this.otherNames]),
      namespace: this.contents.namespace,
      ours: this.contents.ours,
    };
  }

  /** The names of the whole workbook. */
  names(): DefinedName[] {
    return [...this.rangeNames(), ...this.otherNames.filter(({ sheet }) => sheet === undefined)];
  }

  private rangeNames(): DefinedName[] {
    return this.getters.getNamedRanges().map(({ name, range }) => ({
      name,
      sheet: undefined,
      text: `${sheetPrefix(this.sheetName(range.sheetId) ?? '')}!${fixed(zoneAddress(range.zone))}`,
    }));
  }

  translate(formula: string, position: CellPosition): string | undefined {
    if (!needsTranslation.test(formula) && !this.isNamed(formula)) return undefined;
    const place = { ...this.placeOf(position), shift: { rows: 0, columns: 0 } };
    try {
      return `=${translateFormula(formula.slice(1), place, this.scope())}`;
    } catch (error) {
      if (error instanceof NotWritten) return undefined;
      throw error;
    }
  }

  placeOf({ sheetId, row, col: column }: CellPosition) {
    return { sheet: this.getters.getSheetIds().indexOf(sheetId), row, column };
  }

  /** Whether it may have tables by their bare name, or names that are no ranges. */
  isNamed(formula: string): boolean {
    const text = formula.toLowerCase();
    const others = this.otherNames.some(({ name }) => text.includes(name.toLowerCase()));
    return others || this.tables.all().some(({ name }) => text.includes(name.toLowerCase()));
  }

  handled(command: { type: string }, dispatch: Dispatch | undefined): void {
    // While the model is being made there is nothing to put right.
    if (!this.model) return;
    this.tables.note(command);
    // A part of the engine is at it: what asked for that comes later.
    if ((this.model as unknown as { status: number }).status !== running && dispatch) return;
    if (this.tidied === this.tables.revision) return;
    const sizes = this.tables.sizes();
    if (dispatch) {
      fillHeadings(this.tables, this.model, dispatch);
      if (sizes !== this.sizes) this.rewriteOutgrown(dispatch);
    }
    this.sizes = sizes;
    this.tidied = this.tables.revision;
  }

  typed(display: string, position: CellPosition): void {
    this.typedFormulas.set(display, position);
  }

  /** Writes formulas over tables again that no longer come to the cells the tables have now. */
  rewriteOutgrown(dispatch: Dispatch): void {
    rewriteOutgrown(this.typedFormulas, dispatch);
  }

  /** The formula in a cell as people write it; undefined where it holds a constant. */
  formula(position: CellPosition): string | undefined {
    return this.typedFormulas.formula(position);
  }

  /** A formula of the engine with the names of sheets as the workbook has them. */
  named(formula: string): string {
    const given = [...this.sheetNames.values()].filter((name) => name.includes("'"));
    return given.reduce(
      (text, name) => text.replaceAll(`${sheetPrefix(engineSheetName(name))}!`, `${sheetPrefix(name)}!`),
      formula,
    );
  }

  /** Whether the formula in a cell keeps the value it had in the file. */
  isKept(position: CellPosition): boolean {
    const cell = this.getters.getCell(position);
    return cell?.isFormula === true && isKeptFormula(cell.compiledFormula);
  }

  /** The constant or result in a cell; an error as its code. */
  value(position: CellPosition): Exclude<StoredValue, object> | null {
    const cell = this.getters.getCell(position);
    if (cell && !cell.isFormula && cell.content !== '') return constantOf(cell);
    const { value } = this.getters.getEvaluatedCell(position);
    return plainCode(value) as Exclude<StoredValue, object> | null;
  }

  /** The same as files hold it: errors told from text that looks like one, headings of tables as text. */
  storedValue(position: CellPosition): StoredValue {
    const heading = this.tables.heading(position);
    if (heading !== undefined) return heading;
    const value = this.value(position);
    const { type } = this.getters.getEvaluatedCell(position);
    return type === 'error' && isError(value) ? { error: value } : value;
  }

  format(position: CellPosition): string {
    return writtenFormat(this.getters.getCell(position)?.format);
  }

  /** The cells a sheet uses, undefined where it uses none. */
  usedZone(sheetId: UID): Zone | undefined {
    const { numberOfRows, numberOfCols } = this.getters.getSheetSize(sheetId);
    const isFilled = (row: number, col: number) =>
      this.getters.getEvaluatedCell({ sheetId, col, row }).value !== null;
    // From the sides inward: what is between them is not looked at.
    const rows = numbers(0, numberOfRows);
    const columns = numbers(0, numberOfCols);
    const top = rows.find((row) => columns.some((column) => isFilled(row, column)));
    if (top === undefined) return undefined;
    const bottom = [...rows].reverse().find((row) => columns.some((column) => isFilled(row, column))) ?? top;
    const within = numbers(top, bottom + 1);
    const left = columns.find((column) => within.some((row) => isFilled(row, column))) ?? 0;
    const right =
      [...columns].reverse().find((column) => within.some((row) => isFilled(row, column))) ?? left;
    return { top, bottom, left, right };
  }
}

const numbers = (from: number, to: number) => Array.from({ length: to - from }, (_, at) => from + at);

const fixed = (address: string) => address.replaceAll(/([A-Z]+)(\d+)/g, '$$$1$$$2');
