import { rowsAtOnce } from '../../functions/turns.js';
import { OurFunctions } from '../../headless/engine/ourFunctions.js';
import { isErrorCode, isMatrix, Waiting, type Matrix, type Operand } from '../../headless/engine/values.js';
import type { LoadedFunction } from '../../headless/functions/scriptHost.js';
import type { CallingCell, PostponedCalls } from './postponedCalls.js';

/** The function that works out each row of its list by itself. */
const listFunction = 'LISTCHECK';
/** It also makes its shop known to the others, so it is always called. */
const shopFunction = 'SHOP';
/** Characters of what is asked, for the calls that are kept: some 250,000 rows. */
const charactersKept = 100_000_000;
const listsKept = 8;
/** Cells from which on the arguments are not worth comparing. */
const cellsCompared = 400;
/** Rows of a list that are worked out in one piece. */
const rowsInPiece = 100;

/** The rows of one list, and its heading row, as they came out. */
interface ListResult {
  titles: unknown[];
  rows: Map<string, unknown[]>;
}

/**
 * Our functions give the same for the same arguments, and the grid asks again for everything when one thing
 * changes: what was worked out is kept. Errors are not: a shop may be read only later.
 */
export class RememberedCalls {
  private readonly results = new Map<string, Operand>();
  private readonly lists = new Map<string, ListResult>();
  private characters = 0;

  constructor(
    private readonly functions: OurFunctions,
    private readonly postponed?: PostponedCalls,
  ) {}

  call(one: LoadedFunction, operands: (Operand | undefined)[], cell?: CallingCell): Operand {
    const [list, ...rest] = operands;
    if (one.metadata.name === listFunction && isMatrix(list) && !rest.some(isMatrix))
      return this.list(one, { list, rest }, cell);
    if (one.metadata.name === shopFunction || sizeOf(operands) > cellsCompared)
      return this.functions.call(one, operands);
    const key = one.metadata.name + keyOf(operands);
    const known = this.results.get(key);
    if (known !== undefined) {
      this.postponed?.join(key, cell);
      return known;
    }
    const make = () => this.made(key, one, operands);
    if (!this.postponed) return make();
    const answer = this.postponed.answer(key);
    if (answer) return answer.result ?? make();
    const stored = cell && this.postponed.storedResult?.(cell);
    if (stored !== undefined && stored !== null && typeof stored !== 'object') {
      const shown = { value: stored };
      this.keep(key, shown);
      this.postponed.postpone(key, cell, make, shown);
      return shown;
    }
    if (this.postponed.allows(1)) return make();
    this.postponed.postpone(key, cell, make);
    throw new Postponed();
  }

  private made(key: string, one: LoadedFunction, operands: (Operand | undefined)[]): Operand {
    const result = this.functions.call(one, operands);
    if (hasError(result)) this.drop(key);
    else this.keep(key, result);
    return result;
  }

  private keep(key: string, result: Operand): void {
    if (!this.results.has(key)) this.characters += key.length;
    this.results.set(key, result);
    for (const oldest of this.results.keys()) {
      if (this.characters <= charactersKept) break;
      this.drop(oldest);
    }
  }

  private drop(key: string): void {
    if (this.results.delete(key)) this.characters -= key.length;
  }

  /** Only rows that were not there before are worked out. */
  private list(one: LoadedFunction, { list, rest }: ListCall, cell: CallingCell | undefined): Operand {
    const [headings = '', ...keys] = rowKeys(list);
    const context = headings + keyOf(rest);
    const known = this.lists.get(context);
    const fresh = keys.flatMap((key, at) => (known?.rows.has(key) ? [] : at + 1));
    if (known && fresh.length === 0) return whole(keys, known);
    const isTried = this.postponed?.answer(context) !== undefined;
    // A row of a list takes longer than a call: 500 of them would be a task of 0.2 s.
    const isLong = fresh.length > rowsAtOnce;
    if (this.postponed && !isTried && (isLong || !this.postponed.allows(fresh.length))) {
      this.postponeRows(one, { list, rest }, { context, keys, fresh }, cell);
      throw new Postponed();
    }
    const result = this.ofRows(one, { list, rest }, fresh);
    if (!isEach(result, fresh))
      return fresh.length === keys.length ? result : this.functions.call(one, [list, ...rest]);
    const rows = new Map(keys.flatMap((key) => pair(key, known?.rows.get(key))));
    const now = { titles: result.map((column) => column[0]), rows };
    addRows(now, result, keys, fresh);
    this.keepList(context, now);
    return whole(keys, now);
  }

  /** Rows of a list as they come out, below the heading row. */
  private ofRows(one: LoadedFunction, { list, rest }: ListCall, rows: readonly number[]): Operand {
    const asked = list.map((column) => [0, ...rows].map((row) => column[row])) as Matrix;
    return this.functions.call(one, [asked, ...rest]);
  }

  /** The rows of a long list wait in pieces; the list itself is put together when the last of them is there. */
  private postponeRows(
    one: LoadedFunction,
    call: ListCall,
    { context, keys, fresh }: { context: string; keys: readonly string[]; fresh: readonly number[] },
    cell: CallingCell | undefined,
  ): void {
    const nothing: Operand = { value: null };
    const piece = (rows: readonly number[]) => (): Operand => {
      const result = this.ofRows(one, call, rows);
      if (!isEach(result, rows)) return nothing;
      const now = this.lists.get(context) ?? { titles: result.map((column) => column[0]), rows: new Map() };
      addRows(now, result, keys, rows);
      this.keepList(context, now);
      return nothing;
    };
    for (let from = 0; from < fresh.length; from += rowsInPiece) {
      const name = `${context} ${from}`;
      this.postponed?.postpone(name, undefined, piece(fresh.slice(from, from + rowsInPiece)), nothing);
    }
    // Calls are made in the order of rows, and those of one row in the order they came.
    const last = cell && { ...cell, row: Number.MAX_SAFE_INTEGER };
    this.postponed?.postpone(context, last, () => nothing);
  }

  private keepList(context: string, list: ListResult): void {
    this.lists.delete(context);
    if (this.lists.size >= listsKept) this.lists.delete([...this.lists.keys()][0] as string);
    this.lists.set(context, list);
  }
}

interface ListCall {
  list: Matrix;
  rest: (Operand | undefined)[];
}

/** Whether a list gave each of its rows; where something is wrong with it, it gives one error. */
const isEach = (result: Operand, rows: readonly number[]): result is Matrix =>
  isMatrix(result) && result[0]?.length === rows.length + 1 && !hasError(result);

/** The call is made later, and its cell calculated again. */
export class Postponed extends Waiting {}

function addRows(list: ListResult, result: Matrix, keys: readonly string[], rows: readonly number[]): void {
  rows.forEach((row, at) =>
    list.rows.set(
      keys[row - 1] as string,
      result.map((column) => column[at + 1]),
    ),
  );
}

const pair = <Value>(key: string, value: Value | undefined): [string, Value][] =>
  value === undefined ? [] : [[key, value]];

/** All rows as the engine has cells: column by column. */
const whole = (keys: readonly string[], { titles, rows }: ListResult): Operand =>
  titles.map((title, column) => [title, ...keys.map((key) => rows.get(key)?.[column])]) as Matrix;

const keyOf = (operands: readonly (Operand | undefined)[]): string =>
  JSON.stringify(
    operands.map((operand) =>
      isMatrix(operand) ? operand.map((column) => column.map(({ value }) => value)) : operand?.value,
    ),
  );

/** What stands in each row, as text. */
const rowKeys = (list: Matrix): string[] =>
  Array.from({ length: list[0]?.length ?? 0 }, (_, row) =>
    JSON.stringify(list.map((column) => column[row]?.value)),
  );

const sizeOf = (operands: readonly (Operand | undefined)[]): number =>
  operands.reduce(
    (sum, operand) => sum + (isMatrix(operand) ? operand.length * (operand[0]?.length ?? 0) : 1),
    0,
  );

const hasError = (result: Operand): boolean =>
  isMatrix(result)
    ? result.some((column) => column.some(({ value }) => isErrorCode(value)))
    : isErrorCode(result.value);
