import { helpers, Model as EngineModel } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Cell, CellPosition, Model, UID } from '@odoo/o-spreadsheet';
import type { Scope } from '../../headless/formula/scope';
import { sheetPrefix, zoneAddress, type CellValue, type DefinedName, type Zone } from '../../xlsx';
import { isError, plainCode } from '../engine/errors';
import { keptFunction } from '../engine/kept';
import { prepareEngine } from '../engine/prepare';
import type { FormulaKeeper } from '../engine/typed';
import { constantOf, writtenFormat } from '../open/content';
import { engineSheetName, NotWritten, rangeOfName, translateFormula } from './translate';
import { TableNames } from './tableNames';

/** What a book is made from. */
export interface BookContents {
  /** The engine's own form of a workbook. */
  data: Record<string, unknown>;
  sheets: { sheetId: string; name: string }[];
  tables: { sheetId: string; zone: Zone; name: string }[];
  /** All defined names; those that stand for a range live in the engine from then on. */
  names: readonly DefinedName[];
  /** Formulas as people write them. */
  formulas: { sheetId: string; row: number; column: number; display: string }[];
  namespace: string;
  /** Our functions' names, upper case. */
  ours: ReadonlySet<string>;
}

type Transport = NonNullable<NonNullable<ConstructorParameters<typeof EngineModel>[1]>['transportService']>;

interface Typed {
  display: string;
  engine: string;
}

/** Formulas that the engine may not take as they are written. */
const needsTranslation = /[[@#\\_']|""/;

/** A workbook in the grid: the engine's model, and what the engine does not know of it. */
export class GridBook implements FormulaKeeper {
  readonly model: Model;
  readonly tables: TableNames;
  private readonly typedFormulas = new Map<string, Typed>();
  private readonly sheetNames = new Map<UID, string>();
  private readonly otherNames: readonly DefinedName[];

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
    for (const { sheetId, name } of contents.sheets) this.nameSheet(sheetId, name);
    for (const { sheetId, zone, name } of contents.tables) this.tables.give(sheetId, zone, name);
    this.otherNames = contents.names.filter(({ sheet, text }) => sheet !== undefined || !rangeOfName(text));
    for (const { sheetId, row, column, display } of contents.formulas)
      this.typed(display, { sheetId, row, col: column });
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
  }

  /** Where formulas find sheets, tables and names. */
  scope(): Scope {
    const names = new Map<string, DefinedName[]>();
    for (const name of [...this.rangeNames(), ...this.otherNames]) {
      const key = name.name.toLowerCase();
      names.set(key, [...(names.get(key) ?? []), name]);
    }
    return {
      sheets: this.getters.getSheetIds().map((id) => ({ name: this.sheetName(id) ?? '' })),
      tables: new Map(this.tables.all().map((table) => [table.name.toLowerCase(), table])),
      names,
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
    const known = this.namesToWriteOut();
    if (!needsTranslation.test(formula) && !known.some((name) => formula.toLowerCase().includes(name)))
      return undefined;
    const place = {
      sheet: this.getters.getSheetIds().indexOf(position.sheetId),
      row: position.row,
      column: position.col,
      shift: { rows: 0, columns: 0 },
    };
    try {
      return `=${translateFormula(formula.slice(1), place, this.scope())}`;
    } catch (error) {
      if (error instanceof NotWritten) return undefined;
      throw error;
    }
  }

  /** Tables by their bare name, and names that are no ranges. */
  private namesToWriteOut(): string[] {
    const { tables } = this.scope();
    return [...tables.keys(), ...this.otherNames.map(({ name }) => name.toLowerCase())];
  }

  /** Formulas that name one of these tables and no longer come to the cells it has now. */
  outgrown(tables: readonly string[]): { display: string; position: CellPosition }[] {
    const names = tables.map((name) => name.toLowerCase());
    return [...this.typedFormulas].flatMap(([key, { display, engine }]) => {
      if (!names.some((name) => display.toLowerCase().includes(name))) return [];
      const position = this.getters.getCellPosition(Number(key.slice(key.lastIndexOf(' ') + 1)));
      const cell = position && this.getters.getCell(position);
      if (!cell?.isFormula || keyOf(position.sheetId, cell) !== key || this.engineFormula(cell) !== engine)
        return [];
      const now = this.translate(display, position);
      return now === undefined || squeezed(now) === squeezed(engine) ? [] : [{ display, position }];
    });
  }

  typed(display: string, position: CellPosition): void {
    const cell = this.getters.getCell(position);
    if (!cell?.isFormula) return;
    this.typedFormulas.set(keyOf(position.sheetId, cell), { display, engine: this.engineFormula(cell) });
  }

  private engineFormula(cell: Extract<Cell, { isFormula: true }>): string {
    return cell.compiledFormula.toFormulaString(this.getters);
  }

  /** The formula in a cell as people write it; undefined where it holds a constant. */
  formula(position: CellPosition): string | undefined {
    const cell = this.getters.getCell(position);
    if (!cell?.isFormula) return undefined;
    const engine = this.engineFormula(cell);
    const typed = this.typedFormulas.get(keyOf(position.sheetId, cell));
    if (!typed) return this.named(engine);
    // Rows may have moved since: the formula as it was typed holds where it still comes to the same.
    if (typed.engine === engine) return typed.display;
    const now = this.translate(typed.display, position);
    return now !== undefined && squeezed(now) === squeezed(engine) ? typed.display : this.named(engine);
  }

  /** A formula of the engine with the names of sheets as the workbook has them. */
  private named(formula: string): string {
    const given = [...this.sheetNames.values()].filter((name) => name.includes("'"));
    return given.reduce(
      (text, name) => text.replaceAll(`${sheetPrefix(engineSheetName(name))}!`, `${sheetPrefix(name)}!`),
      formula,
    );
  }

  /** Whether the formula in a cell keeps the value it had in the file. */
  isKept(position: CellPosition): boolean {
    const cell = this.getters.getCell(position);
    return cell?.isFormula === true && cell.compiledFormula.usesSymbol(keptFunction);
  }

  /** The constant or result in a cell; an error as its code. */
  value(position: CellPosition): Exclude<CellValue, object> | null {
    const cell = this.getters.getCell(position);
    if (cell && !cell.isFormula && cell.content !== '') return constantOf(cell);
    const { value } = this.getters.getEvaluatedCell(position);
    return plainCode(value) as Exclude<CellValue, object> | null;
  }

  /** The same, with errors told from text that looks like one. */
  storedValue(position: CellPosition): CellValue {
    const value = this.value(position);
    const { type } = this.getters.getEvaluatedCell(position);
    return type === 'error' && isError(value) ? { error: value } : value;
  }

  format(position: CellPosition): string {
    return writtenFormat(this.getters.getCell(position)?.format);
  }

  /** The cells a sheet uses, undefined where it uses none. */
  usedZone(sheetId: UID): Zone | undefined {
    let zone: Zone | undefined;
    for (const { col, row } of this.getters.getEvaluatedCellsPositions(sheetId)) {
      if (this.getters.getEvaluatedCell({ sheetId, col, row }).value === null) continue;
      zone ??= { top: row, bottom: row, left: col, right: col };
      zone.top = Math.min(zone.top, row);
      zone.bottom = Math.max(zone.bottom, row);
      zone.left = Math.min(zone.left, col);
      zone.right = Math.max(zone.right, col);
    }
    return zone;
  }
}

const keyOf = (sheetId: UID, cell: Cell) => `${sheetId} ${cell.id}`;

const fixed = (address: string) => address.replaceAll(/([A-Z]+)(\d+)/g, '$$$1$$$2');

const squeezed = (formula: string) => formula.replaceAll(' ', '');
