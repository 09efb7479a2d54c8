import { type Finding, refusal } from '../../check/finding.js';
import { type Failure, InputError, refuse } from '../../inputError.js';
import { type CellValue, isBlank, meant, plainText, quoted } from '../../quantity/cellValue.js';
import type { LengthKindName } from '../../quantity/lengthKind.js';
import { readLength } from '../../quantity/readLength.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { Column } from './readHeadings.js';

/** Reads the cells of one row; what cannot be read becomes a finding, and the rest of the row is still read. */
export class RowReader {
  private readonly found: { at: number; finding: Finding }[] = [];
  private readonly unclearAt = new Set<number>();
  private readonly cells: CellValue[];

  constructor(
    cells: readonly CellValue[],
    readonly unit: LengthUnit,
  ) {
    this.cells = cells.map(meant);
  }

  /** What could not be read, in the order of the columns. */
  get problems(): Finding[] {
    return [...this.found].sort((a, b) => a.at - b.at).map(({ finding }) => finding);
  }

  cell(column: Column | undefined): CellValue {
    return column ? (this.cells[column.at] ?? null) : null;
  }

  isFilled(column: Column | undefined): boolean {
    return !isBlank(this.cell(column));
  }

  /** Several columns as one, their cells in a list: a column of its own, of which the row has no cell yet. */
  list(columns: readonly Column[]): Column {
    const [first] = columns;
    const at = this.cells.length;
    this.cells.push(columns.map((column) => String(this.cell(column))).join('; '));
    const heading = columns.map((column) => column.heading).join(', ');
    return { at, heading, of: columns, ...(first?.unit === undefined ? {} : { unit: first.unit }) };
  }

  /** Whether a cell cannot be read, or another contradicts it: what it says is not known, and it is not blank. */
  isUnclear(column: Column | undefined): boolean {
    return column !== undefined && this.unclearAt.has(column.at);
  }

  /** The value of a filled cell; undefined where it is blank or cannot be read. */
  read<Value>(
    column: Column | undefined,
    reader: (value: CellValue, argument: string) => Value,
  ): Value | undefined {
    if (!column || !this.isFilled(column)) return undefined;
    const cell = this.cell(column);
    try {
      if (isDoubtful(cell) && /[\p{L}\d]/u.test(cell)) refuseDoubt(column, cell);
      const value = reader(withColumnUnit(cell, column, this.unit), column.heading);
      if (isDoubtful(cell)) refuseDoubt(column, cell);
      return typeof cell === 'string' && pointsToNote(cell) ? refuseNote(column, cell) : value;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      this.markUnclear(column);
      this.refuse(column, column.heading, isTick(cell) ? tickFailure(column, cell) : error.failure);
      return undefined;
    }
  }

  length(column: Column | undefined, kind: LengthKindName): number | undefined {
    return this.read(column, (value, argument) => readLength(value, argument, this.unit, kind));
  }

  /** As `read`, for text with lengths in it; `length` reads them, bare numbers in the unit of the column. */
  readText<Value>(
    column: Column | undefined,
    reader: (text: string, argument: string, length: (text: string, kind: LengthKindName) => number) => Value,
  ): Value | undefined {
    if (!column) return undefined;
    const cell = this.cell(column);
    const whole = String(cell);
    return this.read(column, (_, argument) =>
      reader(whole, argument, (text, kind) => {
        const value = text === whole ? cell : text;
        return readLength(withColumnUnit(value, column, this.unit), argument, this.unit, kind);
      }),
    );
  }

  /** The cells of some columns as they stand in the sheet, with the unit of the heading; nothing where all are blank. */
  typed<Field extends string>(
    columns: Partial<Record<Field, Column>>,
    fields: readonly Field[],
  ): { typed?: Partial<Record<Field, string>> } {
    const typed: Partial<Record<Field, string>> = {};
    let any = false;
    for (const field of fields) {
      const column = columns[field];
      if (!column || !this.isFilled(column)) continue;
      const cell = withColumnUnit(this.cell(column), column, this.unit);
      typed[field] = typeof cell === 'string' ? plainText(cell) : String(cell);
      any = true;
    }
    return any ? { typed } : {};
  }

  /** A problem told at a column; one at no column of the list comes last. */
  problem(
    column: Column | undefined,
    { about, argument, problem }: { about: string; argument: string; problem: string },
  ): void {
    this.refuse(column, about, { code: 'invalid', argument, received: '', problem, allowed: '' });
  }

  /** A problem of a cell that another one contradicts: what it says is not known. */
  contradiction(
    column: Column | undefined,
    told: { about: string; argument: string; problem: string },
  ): void {
    if (column) this.markUnclear(column);
    this.problem(column, told);
  }

  private markUnclear(column: Column): void {
    for (const { at } of [column, ...(column.of ?? [])]) this.unclearAt.add(at);
  }

  private refuse(column: Column | undefined, about: string, failure: Failure): void {
    const at = column?.of?.[0]?.at ?? column?.at ?? Number.MAX_SAFE_INTEGER;
    this.found.push({ at, finding: refusal(failure, about) });
  }
}

/** Whether bare numbers of a column are in the shop's unit: the heading states none, or that one. */
export function isInShopUnit({ unit: stated }: Column, unit: LengthUnit): boolean {
  return stated === undefined || (unit === 'mm' ? stated === 'mm' : stated.startsWith('in'));
}

/** The unit of bare numbers in a section below a heading: `Size (mm)` says mm for all of it. */
export function unitUnder(column: Column | undefined, unit: LengthUnit): LengthUnit {
  if (column?.unit === 'mm') return 'mm';
  return column?.unit?.startsWith('in') ? 'in' : unit;
}

/** The column without its unit, for what has sizes of its own. */
export function bareColumn(column: Column | undefined): Column | undefined {
  return column && { at: column.at, heading: column.heading };
}

/** Text that says its own unit: `12 mm`, `2'-6`, `3/8"`. */
const ownUnit = /[\d½¼¾⅓⅔⅛⅜⅝⅞] ?(?:mm|cm|m\b|in\b|inch|ft\b|feet|foot|["'′″“”’])/i;
const lastSize = /([\d½¼¾⅓⅔⅛⅜⅝⅞])([^\d½¼¾⅓⅔⅛⅜⅝⅞]*)$/;

/** A bare number below a heading such as `Length (ft)` has that unit, whatever the shop's, in text too. */
function withColumnUnit(value: CellValue, column: Column, unit: LengthUnit): CellValue {
  if (column.unit === undefined || isInShopUnit(column, unit)) return value;
  if (typeof value === 'number') return `${value} ${column.unit}`;
  if (typeof value !== 'string' || ownUnit.test(value)) return value;
  return value.replace(lastSize, `$1 ${column.unit}$2`);
}

/** `A36 ?`: whoever typed it was not sure. */
function isDoubtful(cell: CellValue): cell is string {
  return typeof cell === 'string' && /[?？¿]/.test(cell);
}

function refuseDoubt({ heading }: Column, cell: string): never {
  const problem = `${quoted(cell)} has a question mark.`;
  return refuse(heading, cell, problem, 'Write what is sure, or clear the cell.');
}

/** Whether a text has a mark that points to a note elsewhere: `2*`, `A36†`. Common practice, no source. */
export function pointsToNote(text: string): boolean {
  return /^\s*\*|\*\s*$|[†‡§]/.test(text);
}

function refuseNote({ heading }: Column, cell: string): never {
  const problem = `${quoted(cell)} points to a note, which is not read.`;
  return refuse(
    heading,
    cell,
    problem,
    'Write what the note says in its columns, and the cell without the mark.',
  );
}

/** A tick or a cross alone: it says yes in some lists, no in others. */
function isTick(cell: CellValue): cell is string {
  return typeof cell === 'string' && /^(?:[x×✓✔✗✘☒☑]|\(x\)|\[x\])$/i.test(cell.trim());
}

function tickFailure({ heading }: Column, cell: string): Failure {
  const problem = `${quoted(cell)} may be a tick, or say that there is none.`;
  const allowed = 'Write what is meant, or clear the cell.';
  return { code: 'invalid', argument: heading, received: cell, problem, allowed };
}
