import { type LongWork, refuseWhenCanceled } from '../longWork.js';
import { WorkbookError } from '../workbookError.js';
import { type Batch, inBatches, smaller } from './batches.js';
import type { Action, Done, Planned, WriteHost } from '../writeHost.js';
import { makePlan } from './plan.js';
import { takeBack, stillToTakeBack } from './takeBack.js';
import { refuseChangedSince } from './refuseChangedSince.js';
import { refuseChangedSincePlan } from './refuseChangedSincePlan.js';
import type { Revert, Step, WriteOptions, WritePlan } from '../step.js';
import { undoing } from './undo.js';

/*
 * Every write takes four steps: look at what it touches, refuse what would not end well, do it in messages
 * that the host accepts, and know how to take it back.
 */

/** Planning, asking, writing in slices, and taking back: the same for every implementation of the port. */
export class Writer {
  private readonly actions = new WeakMap<WritePlan, readonly Planned[]>();

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
    refuseWhenCanceled(work, 'Stopped: nothing was written.');
    this.actions.delete(plan);
    await refuseChangedSincePlan(actions, this.host);
    const done = await this.perform(actions, work);
    return this.revertOf(plan, done);
  }

  private revertOf(plan: WritePlan, done: readonly Done[]): Revert {
    let left: readonly Done[] | undefined = done;
    const run = async (work: LongWork = {}): Promise<void> => {
      if (!left) throw new WorkbookError('failed', 'This change is undone already.');
      refuseWhenCanceled(work, 'Stopped: nothing was undone.');
      await refuseChangedSince(left, this.host, { orAsBefore: left !== done });
      try {
        await this.takeBack(undoing(left), work);
      } catch (error) {
        left = await stillToTakeBack(left, this.host);
        throw error;
      }
      left = undefined;
    };
    return { plan, run };
  }

  /** All of the actions or none: what was done before a failure is put back. */
  private async perform(actions: readonly Planned[], work: LongWork): Promise<Done[]> {
    const done: Done[] = [];
    const queue = inBatches(actions, this.messageBytes);
    const total = cellsIn(queue);
    for (let batch = queue.shift(); batch; batch = queue.shift()) {
      let sent: readonly Planned[] = [];
      try {
        refuseWhenCanceled(work, 'Stopped: the cells are as they were.');
        sent = batch.actions;
        for (const each of await this.send(batch, queue)) done.push(each);
      } catch (error) {
        throw await takeBack(error, done, sent, this.host);
      }
      work.progress?.(total - cellsIn(queue), total);
    }
    return done;
  }

  /** A failure leaves the rest to be taken back by trying again. */
  private async takeBack(actions: readonly Action[], work: LongWork): Promise<void> {
    const queue = inBatches(actions, this.messageBytes);
    const total = cellsIn(queue);
    for (let batch = queue.shift(); batch; batch = queue.shift()) {
      refuseWhenCanceled(work, 'Stopped. Undo again for the rest.');
      await this.send(batch, queue);
      work.progress?.(total - cellsIn(queue), total);
    }
  }

  /** One message; one that the host finds too large goes back to the queue in smaller ones. */
  private async send<Each extends Action>(
    batch: Batch<Each>,
    queue: Batch<Each>[],
  ): Promise<{ action: Each; after: Done['after'] }[]> {
    try {
      const after = await this.host.perform(batch.actions);
      return batch.actions.map((action, at) => ({ action, after: after[at] }));
    } catch (error) {
      const parts = error instanceof WorkbookError && error.trouble === 'too large' ? smaller(batch) : [];
      if (parts.length < 2) throw error;
      queue.unshift(...parts);
      return [];
    }
  }
}

function cellsIn(batches: readonly Batch[]): number {
  return batches.reduce((sum, { cells }) => sum + cells, 0);
}
