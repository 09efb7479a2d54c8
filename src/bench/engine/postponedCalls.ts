import { sameResult, type StoredValue } from '../../sheet/cellValue.js';
import type { Pausing } from '../../xlsx/pausing.js';
import { isMatrix, topLeft, type Operand } from '../../headless/engine/values.js';

/** Calls of our functions, or rows of a list, that one task makes; the others wait: about 50 ms. */
const callsInTask = 500;

/** Cells that get their answers in one task. */
const cellsInTask = 2_000;

/** The cell a call is made for. */
export interface CallingCell {
  id: number;
  sheetId: string;
  row: number;
  col: number;
}

/** A call that waits, and the cells that wait for it. */
interface Postponed {
  /** Where the first of them stands: calls are made from the top of the sheet down. */
  row: number;
  cells: number[];
  make: () => Operand;
  /** What its cell shows meanwhile; undefined where that is no value. */
  shown: Operand | undefined;
}

/** The value that the file has for a cell, where it may be shown before it is worked out. */
export type StoredResult = (cell: CallingCell) => StoredValue | undefined;

/**
 * Calls that would hold up the page: they wait, and are made in turns with everything else. A cell of a file that is being
 * opened shows what is stored meanwhile, any other that its answer comes in a moment.
 */
export class PostponedCalls {
  /** Told when there is something to do. */
  onWaiting: () => void = () => undefined;
  /** While a file is opened: what it has for a cell. */
  storedResult: StoredResult | undefined;
  private readonly waiting = new Map<string, Postponed>();
  private readonly answers = new Map<string, Operand | undefined>();
  private readonly changed = new Set<number>();
  private left = callsInTask;
  private done = 0;

  /** How many calls were made since the last time that none waited, and how many there are to make. */
  get progress(): { done: number; total: number } {
    return { done: this.done, total: this.done + this.waiting.size };
  }

  /** Whether this task may make so many calls more. */
  allows(calls: number): boolean {
    if (this.left === callsInTask) setTimeout(() => (this.left = callsInTask));
    this.left -= calls;
    return this.left >= 0;
  }

  /** What a call came to that was made for the cells that are calculated now. */
  answer(key: string): { result: Operand | undefined } | undefined {
    return this.answers.has(key) ? { result: this.answers.get(key) } : undefined;
  }

  postpone(key: string, cell: CallingCell | undefined, make: () => Operand, shown?: Operand): void {
    if (!this.waiting.has(key)) this.waiting.set(key, { row: cell?.row ?? 0, cells: [], make, shown });
    this.join(key, cell);
    if (this.waiting.size === 1) this.onWaiting();
  }

  /** A cell shows what another waits for: alike rows ask the same. */
  join(key: string, cell: CallingCell | undefined): void {
    if (cell) this.waiting.get(key)?.cells.push(cell.id);
  }

  /** Makes what waits now, from the top of the sheet down; gives way after each call. */
  *work(): Pausing<void> {
    const batch = [...this.waiting].sort(([, a], [, b]) => a.row - b.row);
    for (const [key, call] of batch) {
      // Another workbook was opened meanwhile.
      if (this.waiting.get(key) !== call) continue;
      this.make(key, call);
      this.waiting.delete(key);
      this.done += 1;
      yield;
    }
    if (this.waiting.size === 0) this.done = 0;
  }

  private make(key: string, { make, shown, cells }: Postponed): void {
    let result: Operand | undefined;
    try {
      result = make();
    } catch {
      // What goes wrong is told in the cell, which makes the call again itself.
      result = undefined;
    }
    if (result !== undefined && shown !== undefined && isSame(result, shown)) return;
    this.answers.set(key, result);
    for (const id of cells) this.changed.add(id);
  }

  /** The cells whose answers came, for the one who has them calculated; gives way after each part of them. */
  *delivering(calculate: (cells: number[], isLast: boolean) => void): Pausing<void> {
    while (this.changed.size > 0) {
      const cells = [...this.changed].slice(0, cellsInTask);
      for (const id of cells) this.changed.delete(id);
      calculate(cells, this.changed.size === 0);
      yield;
    }
    this.answers.clear();
  }

  /** Another workbook comes. */
  forget(): void {
    this.waiting.clear();
    this.changed.clear();
    this.answers.clear();
    this.done = 0;
  }
}

function isSame(a: Operand, b: Operand): boolean {
  const isOne = (operand: Operand) => !isMatrix(operand) || operand.length * (operand[0]?.length ?? 0) === 1;
  if (!isOne(a) || !isOne(b)) return false;
  return sameResult(topLeft(a).value, topLeft(b).value);
}
