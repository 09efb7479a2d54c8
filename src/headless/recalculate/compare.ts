import { isCellError, storedErrorCode, type StoredValue } from '../../sheet/cellValue.js';
import type { Placement } from './spill.js';
import type { SheetGrid } from './sheetGrid.js';

const tolerance = 1e-9;

/** Whether a computed value is the one the file has, numbers to nine digits. */
export function agrees(computed: StoredValue, stored: StoredValue): boolean {
  if (typeof computed === 'number' && typeof stored === 'number') {
    const scale = Math.max(Math.abs(computed), Math.abs(stored));
    return Math.abs(computed - stored) <= tolerance * scale || scale < 1e-300;
  }
  if (isCellError(computed)) {
    return isCellError(stored) && storedErrorCode(computed.error) === storedErrorCode(stored.error);
  }
  return computed === stored;
}

const shown = (value: StoredValue): string => {
  if (value === null) return 'nothing';
  if (isCellError(value)) return value.error;
  return typeof value === 'string' ? JSON.stringify(value.slice(0, 40)) : String(value).toUpperCase();
};

/** How a placement differs from what the file has, in one sentence; undefined when it does not. */
export function difference(grid: SheetGrid, placement: Placement): string | undefined {
  const { zone } = placement;
  for (let row = zone.top; row <= zone.bottom; row++) {
    for (let column = zone.left; column <= zone.right; column++) {
      const [computed, stored] = [placement.value(row, column), grid.fileValue(row, column)];
      if (agrees(computed, stored)) continue;
      return `With the same inputs it comes to ${shown(computed)} here, but the file has ${shown(stored)}.`;
    }
  }
  return undefined;
}
