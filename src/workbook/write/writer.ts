import { type LongWork, refuseWhenCancelled } from '../longWork.js';
import { WorkbookError } from '../workbookError.js';
import { inBatches } from './batches.js';
import type { Action, WriteHost } from './host.js';
import { makePlan } from './plan.js';
import { putBack } from './putBack.js';
import { refuseChangedSince, refuseChangedSincePlan } from './since.js';
import type { Revert, Step, WriteOptions, WritePlan } from './step.js';
import { type Done, undoing } from './undo.js';

/** Planning, asking, writing in slices, and taking back: the same for every implementation of the port. */
export class Writer {
  private readonly actions = new WeakMap<WritePlan, readonly Action[]>();

  constructor(
    private readonly host: WriteHost,
    private readonly messageBytes?: number,
  ) {}

  async plan(steps: readonly Step[]): Promise<WritePlan> {
    const { plan, actions } = await makePlan(steps, this.host);
    this.actions.set(plan, actions);
    return plan;
  }

  async write(plan: WritePlan, { confirmed = false, ...work }: WriteOptions = {}): Promise<Revert> {
    const actions = this.actions.get(plan);
    if (!actions) throw new WorkbookError('failed', 'This plan was written already, or never made here.');
    const held = plan.overwrites.length + plan.formatted;
    if (held > 0 && !confirmed)
      throw new WorkbookError('not confirmed', `${held} cells hold something: look at the changes first.`);
    refuseWhenCancelled(work, 'Stopped: nothing was written.');
    this.actions.delete(plan);
    await refuseChangedSincePlan(actions, this.host);
    const done = await this.act(actions, work);
    return this.revertOf(plan, done);
  }

  private revertOf(plan: WritePlan, done: readonly Done[]): Revert {
    let taken = false;
    const run = async (work: LongWork = {}): Promise<void> => {
      if (taken) throw new WorkbookError('failed', 'This change was taken back already.');
      refuseWhenCancelled(work, 'Stopped: nothing was taken back.');
      await refuseChangedSince(done, this.host);
      taken = true;
      await this.act(undoing(done), work);
    };
    return { plan, run };
  }

  /** All of the actions or none: what was done before a failure is put back. */
  private async act(actions: readonly Action[], work: LongWork): Promise<Done[]> {
    const batches = inBatches(actions, this.messageBytes);
    const total = batches.reduce((sum, batch) => sum + batch.cells, 0);
    const done: Done[] = [];
    let cells = 0;
    for (const batch of batches) {
      try {
        refuseWhenCancelled(work, 'Stopped: the cells are as they were.');
        const after = await this.host.act(batch.actions);
        batch.actions.forEach((action, at) => done.push({ action, after: after[at] }));
      } catch (error) {
        throw await putBack(error, done, batch.actions, this.host);
      }
      cells += batch.cells;
      work.progress?.(cells, total);
    }
    return done;
  }
}
