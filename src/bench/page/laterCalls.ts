import type { GridBook } from '../book/gridBook.js';
import type { PostponedCalls } from '../engine/postponedCalls.js';
import { inTurns, nextTask } from './inTurns.js';
import type { Progress } from './progress.js';

/** Makes the calls that wait, in turns with everything else, and has their cells calculated. */
export class LaterCalls {
  private book: GridBook | undefined;
  private running: Promise<void> | undefined;

  constructor(
    private readonly calls: PostponedCalls,
    private readonly progress: Progress,
  ) {
    calls.onWaiting = () => this.begin();
  }

  /** Another workbook is shown, or none while one is opened. */
  of(book: GridBook | undefined): void {
    this.book = book;
    if (book && this.calls.progress.total > 0) this.begin();
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
    while (this.book && calls.progress.total > calls.progress.done) {
      await inTurns(calls.work(), {
        progress: () => progress.tell('Checking formulas', calls.progress),
        gate: () => progress.gate(),
      });
      if (this.book) this.deliver(this.book);
      await nextTask();
    }
  }

  private deliver({ model, getters }: GridBook): void {
    this.calls.deliver((cells) => {
      const cellIds = cells.filter((id) => getters.tryGetCellPosition(id) !== undefined);
      if (cellIds.length > 0) model.dispatch('EVALUATE_CELLS', { cellIds });
    });
  }
}
