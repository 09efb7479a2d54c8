import type { Area } from './area.js';
import type { Change } from './change.js';
import type { LongWork } from './longWork.js';
import type { Arrangement, Aspect, CellsRead, DefinedName, Place, Sheet, Table } from './reading.js';
import type { Revert, Step, WriteOptions, WritePlan } from './step.js';

/**
 * The few things the pane needs of a workbook. Every failure is a WorkbookError. Nothing is written but by
 * `write`, and that only what a plan has described.
 */
export interface Workbook {
  sheets(): Promise<Sheet[]>;
  tables(): Promise<Table[]>;
  names(): Promise<DefinedName[]>;

  /** The cells of several places, together in one round trip; large ones in slices. */
  read<A extends Aspect>(
    places: readonly Place[],
    aspects: readonly A[],
    work?: LongWork,
  ): Promise<CellsRead<A>[]>;

  /** What is merged and hidden in areas, in their order. */
  arrangement(areas: readonly Area[]): Promise<Arrangement[]>;

  /** Looks at what the steps would change. Writes nothing. */
  plan(steps: readonly Step[]): Promise<WritePlan>;
  /**
   * Does what a plan describes, all of it or nothing. Refuses where cells hold something and `confirmed` is
   * not set, and where somebody changed the cells since the plan was made.
   */
  write(plan: WritePlan, options?: WriteOptions): Promise<Revert>;

  /** The selected cells: several areas where the user selected several. */
  selection(): Promise<Area[]>;
  /** Shows and selects cells. */
  goTo(area: Area): Promise<void>;

  /** Tells of every change until stopped. */
  watch(listener: (change: Change) => void): Promise<Stop>;
}

export type Stop = () => Promise<void>;
