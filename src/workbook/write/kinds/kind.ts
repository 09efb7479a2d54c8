import type { Step } from '../../step.js';
import type { Action, CellState, Done, Look, Planned } from '../../writeHost.js';
import type { WidenedTables } from './widenedTables.js';

/*
 * One file for each kind of action. Each knows what its step may hold, what to look at, what it comes to, when it is
 * refused, and what takes it back; planning, writing and taking back ask these, whatever the kind.
 */

export type Kind = Planned['kind'];
export type StepOf<K extends Kind> = Extract<Step, { kind: K }>;
export type PlannedOf<K extends Kind> = Extract<Planned, { kind: K }>;

/** What is known while it is asked whether something was worked on since. */
export interface Since {
  /** Everything that was done. */
  all: readonly Done[];
  /** Cells may also be as before the write: a taking back that failed halfway has restored some. */
  orAsBefore: boolean;
}

export interface ActionKind<K extends Kind> {
  /** Refuses a step that the host would refuse halfway. */
  refuseShape(step: StepOf<K>): void;
  /** What is looked at to plan a step, before its action is done, and after it was taken back. */
  look(it: StepOf<K> | PlannedOf<K>): Look;
  /** What a step comes to, given what was seen; nothing was looked at where the cells come with a sheet of the plan. */
  plan(step: StepOf<K>, seen: unknown, tables: WidenedTables): PlannedOf<K>;
  /** Refuses where what is seen now is not what the plan was made for. */
  refuseChanged(action: PlannedOf<K>, seen: unknown): void;
  /** What takes it back; undefined where it goes with something else. */
  undo(action: PlannedOf<K>, after: CellState | undefined): Action | undefined;
  /** What is looked at before it is taken back. */
  lookDone(action: PlannedOf<K>): Look;
  /** Refuses where somebody has worked on it since it was done. */
  refuseWorkedOn(action: PlannedOf<K>, after: CellState | undefined, seen: unknown, since: Since): void;
  /** Whether what is seen is as it was before the action. */
  isUndone(action: PlannedOf<K>, seen: unknown): boolean;
  /** What the action is about, in words. */
  described(action: PlannedOf<K>): string;
}
