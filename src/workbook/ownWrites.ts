import type { Area } from './area.js';
import type { Change } from './change.js';
import type { LongWork } from './longWork.js';
import type { Stop, Workbook } from './port.js';
import type { Aspect, CellsRead, Place } from './reading.js';
import type { Revert, Step, WriteOptions, WritePlan } from './step.js';

/**
 * A workbook that tells whoever watches it of what was written through it, whether or not its host does: hosts differ in
 * the events they send an add-in for its own writes. Where the host tells too, a change is told twice.
 */
export class TellingOwnWrites implements Workbook {
  private readonly listeners = new Set<(change: Change) => void>();

  constructor(private readonly workbook: Workbook) {}

  sheets = () => this.workbook.sheets();
  tables = () => this.workbook.tables();
  names = () => this.workbook.names();
  selection = () => this.workbook.selection();
  goTo = (area: Area) => this.workbook.goTo(area);
  arrangement = (areas: readonly Area[]) => this.workbook.arrangement(areas);
  plan = (steps: readonly Step[]) => this.workbook.plan(steps);

  read<A extends Aspect>(
    places: readonly Place[],
    aspects: readonly A[],
    work?: LongWork,
  ): Promise<CellsRead<A>[]> {
    return this.workbook.read(places, aspects, work);
  }

  async write(plan: WritePlan, options?: WriteOptions): Promise<Revert> {
    const revert = await this.telling(plan, () => this.workbook.write(plan, options));
    return { plan: revert.plan, run: (work) => this.telling(plan, () => revert.run(work)) };
  }

  async watch(listener: (change: Change) => void): Promise<Stop> {
    const stop = await this.workbook.watch(listener);
    this.listeners.add(listener);
    return async () => {
      this.listeners.delete(listener);
      await stop();
    };
  }

  /** Tells also after a failure: what could not be put back has changed, too. */
  private async telling<Done>({ steps }: WritePlan, work: () => Promise<Done>): Promise<Done> {
    try {
      return await work();
    } finally {
      const areas = steps.flatMap((step) => ('area' in step ? step.area : []));
      for (const listener of this.listeners) {
        if (areas.length > 0) listener({ kind: 'cells', areas, author: 'here', ours: true });
        if (steps.some(({ kind }) => kind === 'column'))
          listener({ kind: 'moved', areas: [], author: 'here', ours: true });
        // Columns, tables, names and sheets may have come and gone.
        if (steps.some(({ kind }) => kind !== 'cells')) listener({ kind: 'sheets' });
      }
    }
  }
}
