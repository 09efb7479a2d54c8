import type { GridBook } from '../book/gridBook.js';
import type { GridWorkbook } from '../port/gridWorkbook.js';
import type { PostponedCalls } from '../engine/postponedCalls.js';
import type { Pausing } from '../../xlsx/pausing.js';
import { inTurns, nextTask } from './inTurns.js';
import type { Progress } from './progress.js';

/** The workbook that is shown, in the grid and as the pane knows it. */
export interface Shown {
  book: GridBook;
  workbook: GridWorkbook;
}

/** Makes the calls that wait, in turns with everything else, and has their cells calculated. */
export class LaterCalls {
  private shown: Shown | undefined;
  private running: Promise<void> | undefined;

  constructor(
    private readonly calls: PostponedCalls,
    private readonly progress: Progress,
  ) {
    calls.onWaiting = () => this.begin();
  }

  /** Another workbook is shown, or none while one is opened. */
  of(shown: Shown | undefined): void {
    this.shown = shown;
    if (shown && this.calls.progress.total > 0) this.begin();
  }

  /** When nothing waits any more; work that was stopped goes on. */
  async settled(): Promise<void> {
    this.progress.goOn();
    await this.running;
  }

  private begin(): void {
    this.running ??= this.run().finally(() => {
      this.running = undefined;
      this.progress.end();
    });
  }

  private async run(): Promise<void> {
    const { calls, progress } = this;
    // What asked for the calls ends first.
    await nextTask();
    while (this.shown && calls.progress.total > calls.progress.done) {
      await inTurns(calls.work(), {
        progress: () => progress.tell('Checking formulas', calls.progress),
        gate: () => progress.gate(),
      });
      if (this.shown) await inTurns(this.delivering(this.shown));
      await nextTask();
    }
  }

  private delivering({ book: { model, getters }, workbook }: Shown): Pausing<void> {
    return this.calls.delivering((cells, isLast) => {
      const cellIds = cells.filter((id) => getters.tryGetCellPosition(id) !== undefined);
      // What hangs on these cells is told of with the last of them.
      if (isLast) workbook.calculatesAll();
      if (isLast || cellIds.length > 0) model.dispatch('EVALUATE_CELLS', { cellIds });
    });
  }
}
