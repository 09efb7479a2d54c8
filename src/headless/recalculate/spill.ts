import {
  cellKey,
  MAX_COLUMNS,
  MAX_ROWS,
  zoneAddress,
  zoneHolds,
  zonesMeet,
  type Zone,
} from '../../sheet/address.js';
import { sameStored, type StoredValue } from '../../sheet/cellValue.js';
import { isErrorCode, isMatrix, topLeft, type Operand, type Scalar } from '../engine/values.js';
import type { FormulaCell } from './formulaCells.js';
import type { Grids, SheetGrid } from './sheetGrid.js';

/** A scalar as a cell keeps it; a formula that gives blank shows 0. */
export function toCellValue({ value, message }: Scalar): StoredValue {
  if (!isErrorCode(value)) return value ?? 0;
  return message === undefined ? { error: value } : { error: value, message };
}

export const zoneOfCell = ({ row, column }: FormulaCell): Zone => ({
  top: row,
  bottom: row,
  left: column,
  right: column,
});

/** What a formula's result means for the sheet: a value for each cell of a zone. */
export interface Placement {
  zone: Zone;
  value(row: number, column: number): StoredValue;
  /** It would reach farther, but something is in its way. */
  isBlocked?: boolean;
}

/** Where a result goes: one cell, the fixed range of an array formula, or as far as it spills. */
export function placementOf(
  cell: FormulaCell,
  result: Operand,
  grids: Grids,
  owned: (key: number) => boolean,
): Placement {
  const { stored, row, column } = cell;
  if (stored.kind === 'plain' || !stored.ref) return only(cell, toCellValue(topLeft(result)));
  if (stored.kind === 'array') return { zone: stored.ref, value: filling(result, row, column) };
  if (!isMatrix(result)) return only(cell, toCellValue(result));
  const zone = {
    top: row,
    left: column,
    bottom: row + (result[0]?.length ?? 1) - 1,
    right: column + result.length - 1,
  };
  const blocker = blockedBy(cell, zone, grids[cell.sheet], owned);
  if (blocker !== undefined)
    return { ...only(cell, { error: '#SPILL!', message: blocker }), isBlocked: true };
  return { zone, value: (r, c) => toCellValue(result[c - column]?.[r - row] ?? { value: null }) };
}

const only = (cell: FormulaCell, value: StoredValue): Placement => ({
  zone: zoneOfCell(cell),
  value: () => value,
});

/** A result in a fixed range: a single value, row or column repeats, what it lacks is #N/A. */
function filling(result: Operand, top: number, left: number): (row: number, column: number) => StoredValue {
  if (!isMatrix(result)) return () => toCellValue(result);
  const [width, height] = [result.length, result[0]?.length ?? 0];
  return (row, column) => {
    const scalar = result[width === 1 ? 0 : column - left]?.[height === 1 ? 0 : row - top];
    return scalar ? toCellValue(scalar) : { error: '#N/A' };
  };
}

/** What stands in the way of a spill, in one sentence. */
function blockedBy(
  cell: FormulaCell,
  zone: Zone,
  grid: SheetGrid | undefined,
  owned: (key: number) => boolean,
): string | undefined {
  if (zone.bottom >= MAX_ROWS || zone.right >= MAX_COLUMNS)
    return 'The result would reach beyond the end of the sheet.';
  const single = zone.top === zone.bottom && zone.left === zone.right;
  if (!grid || single) return undefined;
  if (grid.file.merged.some((merged) => zonesMeet(merged, zone)))
    return 'The result would reach into merged cells.';
  for (let row = zone.top; row <= zone.bottom; row++) {
    for (let column = zone.left; column <= zone.right; column++) {
      if (row === cell.row && column === cell.column) continue;
      const key = cellKey(row, column);
      if (!owned(key) && isOccupied(grid, row, column)) {
        return `The result needs ${zoneAddress(zone)}, but ${zoneAddress({ top: row, bottom: row, left: column, right: column })} is in use.`;
      }
    }
  }
  return undefined;
}

function isOccupied(grid: SheetGrid, row: number, column: number): boolean {
  const i = grid.file.index.at(row, column);
  return grid.value(row, column) !== null || (i !== undefined && grid.file.formulas[i] !== undefined);
}

/** Writes a placement into the grid, clears what it no longer covers, and says whether anything changed. */
export function place(
  grid: SheetGrid,
  placement: Placement,
  before: Zone,
  owned: (key: number) => boolean,
): boolean {
  let changed = false;
  const set = (row: number, column: number, value: StoredValue) => {
    if (!sameStored(grid.fileValue(row, column), value)) changed = true;
    grid.set(row, column, value);
  };
  eachCell(before, (row, column) => {
    if (!zoneHolds(placement.zone, row, column) && owned(cellKey(row, column))) set(row, column, null);
  });
  eachCell(placement.zone, (row, column) => set(row, column, placement.value(row, column)));
  return changed;
}

function eachCell(zone: Zone, visit: (row: number, column: number) => void): void {
  for (let row = zone.top; row <= zone.bottom; row++) {
    for (let column = zone.left; column <= zone.right; column++) visit(row, column);
  }
}
