import type { Away } from '../../sheet/formula/moves.js';

/** Where and how a formula is evaluated. */
export interface Setting {
  sheet: number;
  row: number;
  column: number;
  /** The cell holds one value: a range used as a value means its crossing with the cell's row or column. */
  plain: boolean;
  /** The formula is one of ours; others are not evaluated where they need that crossing. */
  ours: boolean;
  /** From the cell its formula was read for. */
  away: Away;
}
