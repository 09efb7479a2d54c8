import type { Area } from './area.js';
import type { Content, Contents } from './content.js';
import type { DefinedName, Sheet, Table } from './reading.js';

/** Contents and number formats of an area. */
export interface CellState {
  contents: Content[][];
  formats: string[][];
}

/** An area that may be merged, as one. */
export interface MergeState extends CellState {
  isMerged: boolean;
  /** Its text stands in the middle of it. */
  isCentered: boolean;
}

/** What can be asked of the host while planning and taking back. Asked together, in one round trip. */
export type Look =
  | { look: 'cells'; area: Area }
  /** All that a sheet uses; no rows where the sheet is empty. */
  | { look: 'used'; sheet: string }
  | { look: 'merged'; area: Area }
  | { look: 'sheet'; name: string }
  /** A table that must be there. */
  | { look: 'table'; name: string }
  | { look: 'is table'; name: string }
  | { look: 'name'; name: string };

/** The answers, undefined for what is not there. */
export type Seen<L extends Look> = L extends { look: 'cells' }
  ? CellState
  : L extends { look: 'used' }
    ? CellState & { area: Area }
    : L extends { look: 'merged' }
      ? MergeState
      : L extends { look: 'sheet' }
        ? Sheet | undefined
        : L extends { look: 'table' }
          ? Table
          : L extends { look: 'is table' }
            ? boolean
            : DefinedName | undefined;
export type AllSeen<L extends readonly Look[]> = { [At in keyof L]: Seen<L[At]> };

/** What steps come to. */
export type Planned =
  | CellsAction
  | { kind: 'sheet'; name: string }
  | { kind: 'table'; name: string; area: Area; keepsLook?: true }
  /**
   * A column without contents; position counts from 0 inside the table, which has the area just before. `seen`: the
   * table when planned, undefined for one that the plan makes.
   */
  | { kind: 'column'; table: string; heading: string; position: number; area: Area; seen: Table | undefined }
  | { kind: 'resize'; table: string; area: Area; was: Area }
  | UnmergeAction
  | { kind: 'name'; name: string; area: Area };

/** Takes merged cells apart. `isCentered`: their text stays in the middle of them where the host can do so. */
export interface UnmergeAction {
  kind: 'unmerge';
  area: Area;
  isCentered: boolean;
  /** Where the cells stand when all columns of the plan are there; undefined where they have not moved. */
  standsAt?: Area;
}

/** What the host is told to do: what steps come to, and what takes them back. */
export type Action =
  | Planned
  | { kind: 'drop sheet'; name: string }
  /** The cells of the table stay. */
  | { kind: 'drop table'; name: string }
  /** `area`: the table with the column. */
  | { kind: 'drop column'; table: string; heading: string; position: number; area: Area }
  | { kind: 'merge'; area: Area; isCentered: boolean }
  | { kind: 'drop name'; name: string };

export type ActionOf<Kind extends Action['kind']> = Extract<Action, { kind: Kind }>;

/** An action that was done, and the state of its cells right afterwards. */
export interface Done {
  action: Planned;
  after: CellState | undefined;
}

/** How a host does each kind of action. */
export type Primitives<Result = void> = { [Kind in Action['kind']]: (action: ActionOf<Kind>) => Result };

/** Does an action by the primitive of its kind. */
export function doAction<Kind extends Action['kind'], Result>(
  primitives: { [Each in Kind]: (action: ActionOf<Each>) => Result },
  action: ActionOf<Kind>,
): Result {
  const primitive = primitives[action.kind as Kind] as (given: ActionOf<Kind>) => Result;
  return primitive(action);
}

export interface CellsAction {
  kind: 'cells';
  area: Area;
  contents: Contents;
  formats: Formats;
  /** What the cells hold before: how a constant must be written depends on the format it meets. */
  before: CellState;
  /** In characters, by column; undefined leaves a width as it is. */
  widths?: readonly (number | undefined)[];
  /** Where the cells stand when all columns of the plan are there; undefined where they have not moved. */
  standsAt?: Area;
  /** The cells come with a sheet or column of the same plan, and go with it. */
  fresh: boolean;
}

/** Number formats by cell; undefined leaves a format as it is. */
export type Formats = readonly (readonly (string | undefined)[])[];

/** What an implementation of the port provides; planning, asking, slicing and taking back are the same for all. */
export interface WriteHost {
  /** One round trip. */
  look<const L extends readonly Look[]>(looks: L): Promise<AllSeen<L>>;
  /**
   * One round trip, in order; what was done before a failure stays done. Answers with the state that
   * written cells have then, undefined for the other actions.
   */
  perform(actions: readonly Action[]): Promise<(CellState | undefined)[]>;
}
