import { MAX_COLUMNS, MAX_ROWS, type Zone } from '../address.js';
import type { Corner } from './corner.js';

/** Which sides of a reference move with the cell its formula stands in. */
export interface Moves {
  top: boolean;
  bottom: boolean;
  left: boolean;
  right: boolean;
  /** The rows it may be moved to, of a reference to the row of a table. */
  rows?: { first: number; last: number };
}

/** How far a cell stands from the one that its formula was read for. */
export interface Away {
  down: number;
  right: number;
}

export const notAway: Away = { down: 0, right: 0 };

/** How the zone between two corners moves; undefined where it stays. */
export function movesBetween(a: Corner, b: Corner): Moves | undefined {
  if (!a.movesRow && !b.movesRow && !a.movesColumn && !b.movesColumn) return undefined;
  const [top, bottom] = inOrder(a.row, a.movesRow, b.row, b.movesRow);
  const [left, right] = inOrder(a.column, a.movesColumn, b.column, b.movesColumn);
  return allMoves[Number(top) + 2 * Number(bottom) + 4 * Number(left) + 8 * Number(right)];
}

/** Each once: a formula may have thousands of references. */
const allMoves: readonly Moves[] = Array.from({ length: 16 }, (_, sides) => ({
  top: (sides & 1) !== 0,
  bottom: (sides & 2) !== 0,
  left: (sides & 4) !== 0,
  right: (sides & 8) !== 0,
}));

/** Whether the first and the last of two move. */
function inOrder(a = 0, aMoves: boolean, b = 0, bMoves: boolean): [boolean, boolean] {
  return a > b ? [bMoves, aMoves] : [aMoves, bMoves];
}

/** Where a reference is, seen from a cell that stands some way from the one its formula was read for. */
export function zoneSeen(
  { zone, moves }: { zone: Zone; moves?: Moves | undefined },
  { down, right }: Away,
): Zone {
  if (!moves || (down === 0 && right === 0)) return zone;
  return {
    top: zone.top + (moves.top ? down : 0),
    bottom: zone.bottom + (moves.bottom ? down : 0),
    left: zone.left + (moves.left ? right : 0),
    right: zone.right + (moves.right ? right : 0),
  };
}

/** Where the cell is whose spill is read, seen from such a cell. */
export function cellSeen(
  { row, column, moves }: { row: number; column: number; moves?: Moves | undefined },
  away: Away,
): { row: number; column: number } {
  const { top, left } = zoneSeen(
    { zone: { top: row, bottom: row, left: column, right: column }, moves },
    away,
  );
  return { row: top, column: left };
}

/** How far a formula may be moved so that its references stay what they are. */
export interface Reach {
  up: number;
  down: number;
  left: number;
  right: number;
}

/** How far references may be moved: they stay on the sheet and in their table, and no side passes the other. */
export function reachOf(references: readonly { zone: Zone; moves?: Moves | undefined }[]): Reach {
  const reach = { up: MAX_ROWS, down: MAX_ROWS, left: MAX_COLUMNS, right: MAX_COLUMNS };
  for (const { zone, moves } of references) {
    if (!moves) continue;
    const { top, bottom, left, right } = zone;
    const rows = sideReach(
      top,
      bottom,
      moves.top,
      moves.bottom,
      moves.rows?.first ?? 0,
      moves.rows?.last ?? MAX_ROWS - 1,
    );
    const columns = sideReach(left, right, moves.left, moves.right, 0, MAX_COLUMNS - 1);
    reach.up = Math.min(reach.up, rows.back);
    reach.down = Math.min(reach.down, rows.on);
    reach.left = Math.min(reach.left, columns.back);
    reach.right = Math.min(reach.right, columns.on);
  }
  return reach;
}

function sideReach(
  first: number,
  last: number,
  firstMoves: boolean,
  lastMoves: boolean,
  least: number,
  most: number,
): { back: number; on: number } {
  if (!firstMoves && !lastMoves) return { back: Infinity, on: Infinity };
  return {
    back: firstMoves ? first - least : last - first,
    on: lastMoves ? most - last : last - first,
  };
}
