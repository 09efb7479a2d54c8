import type { Model } from '@odoo/o-spreadsheet';
import { UIPlugin } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';

export type Dispatch = Model['dispatch'];

const together = 'TONROW_TOGETHER';
let waiting: ((dispatch: Dispatch) => void) | undefined;
let running = false;

/** A program is writing, not a person. */
export const isProgramWriting = (): boolean => running;

/** Does what a job dispatches as one command: one calculation, one step to undo. */
export class OneCommandPlugin extends UIPlugin {
  override handle(command: { type: string }): void {
    if (command.type !== together || !waiting) return;
    const job = waiting;
    waiting = undefined;
    running = true;
    job(this.dispatch);
    running = false;
  }
}

/** Runs a job whose dispatches are calculated and undone together. What it throws is thrown here, afterwards. */
export function asOneCommand(model: Model, job: (dispatch: Dispatch) => void): void {
  let failure: { error: unknown } | undefined;
  waiting = (dispatch) => {
    try {
      job(dispatch);
    } catch (error) {
      // A command that ends early would leave the engine in the middle of it.
      failure = { error };
    }
  };
  (model.dispatch as (type: string, payload: object) => unknown)(together, {});
  if (failure) throw failure.error;
}
