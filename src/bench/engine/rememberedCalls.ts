import { OurFunctions } from '../../headless/engine/ourFunctions.js';
import { isErrorCode, isMatrix, type Matrix, type Operand } from '../../headless/engine/values.js';
import type { LoadedFunction } from '../../headless/functions/scriptHost.js';

/** The function that works out each row of its list by itself. */
const listFunction = 'LISTCHECK';
/** It also makes its shop known to the others, so it is always called. */
const shopFunction = 'SHOP';
const callsKept = 20_000;
const listsKept = 8;
/** Cells from which on the arguments are not worth comparing. */
const cellsCompared = 400;

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

  constructor(private readonly functions: OurFunctions) {}

  call(one: LoadedFunction, operands: (Operand | undefined)[]): Operand {
    const [list, ...rest] = operands;
    if (one.metadata.name === listFunction && isMatrix(list) && !rest.some(isMatrix))
      return this.list(one, list, rest);
    if (one.metadata.name === shopFunction || sizeOf(operands) > cellsCompared)
      return this.functions.call(one, operands);
    const key = one.metadata.name + keyOf(operands);
    const known = this.results.get(key);
    if (known !== undefined) return known;
    const result = this.functions.call(one, operands);
    if (hasError(result)) return result;
    if (this.results.size >= callsKept) this.results.clear();
    this.results.set(key, result);
    return result;
  }

  /** Only rows that were not there before are worked out. */
  private list(one: LoadedFunction, list: Matrix, rest: (Operand | undefined)[]): Operand {
    const [headings = '', ...keys] = rowKeys(list);
    const context = headings + keyOf(rest);
    const known = this.lists.get(context);
    const fresh = keys.flatMap((key, at) => (known?.rows.has(key) ? [] : at + 1));
    if (known && fresh.length === 0) return whole(keys, known);
    const asked = list.map((column) => [0, ...fresh].map((row) => column[row])) as Matrix;
    const result = this.functions.call(one, [asked, ...rest]);
    if (!isMatrix(result) || result[0]?.length !== fresh.length + 1 || hasError(result))
      return fresh.length === keys.length ? result : this.functions.call(one, [list, ...rest]);
    const rows = new Map(keys.flatMap((key) => pair(key, known?.rows.get(key))));
    fresh.forEach((row, at) =>
      rows.set(
        keys[row - 1] as string,
        result.map((column) => column[at + 1]),
      ),
    );
    const now = { titles: result.map((column) => column[0]), rows };
    this.lists.delete(context);
    if (this.lists.size >= listsKept) this.lists.delete([...this.lists.keys()][0] as string);
    this.lists.set(context, now);
    return whole(keys, now);
  }
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
