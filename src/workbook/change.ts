import type { Area } from './area.js';

/** Who made a change: this user in this window, or somebody else who has the workbook open. */
export type Author = 'here' | 'elsewhere';

export type Change =
  /** Cells were edited. `ours`: by this add-in itself, where the host can tell. */
  | { kind: 'cells'; areas: Area[]; author: Author; ours: boolean }
  /** Rows, columns or cells were inserted or deleted, so that others moved. */
  | { kind: 'moved'; areas: Area[]; author: Author; ours: boolean }
  /** Formulas were calculated. */
  | { kind: 'calculated'; areas: Area[] }
  | { kind: 'selected'; areas: Area[] }
  /** Rows were hidden or shown; some hosts may not tell where a filter does it. */
  | { kind: 'shown' }
  /** A sheet was added, deleted or renamed. */
  | { kind: 'sheets' };
