import { MAX_COLUMNS, MAX_ROWS, zoneSize, type Zone } from '../../sheet/address.js';
import { isCellError, type StoredValue } from '../../sheet/cellValue.js';
import {
  isErrorCode,
  longestText,
  CannotCompute,
  OurError,
  type Matrix,
  type Scalar,
  type Values,
} from '../engine/values.js';
import type { Work } from '../engine/work.js';
import type { Grids, SheetGrid } from './sheetGrid.js';

/** What a reader of cells asks of the formulas. */
export type FormulaFacts = Pick<Values, 'spillZone' | 'isSubtotal'>;

/** Cells of a range that is read: as many as the sheets of a workbook may have. */
const mostOfRange = 8_000_000;
/** Cells of ranges kept at hand for the next formula that reads the same range. */
const mostRemembered = 6_000_000;
/** Smaller ranges are read again sooner than found again: a row of a list is kept for no other row. */
const leastRemembered = 64;
const blank: Scalar = { value: null };

/** One state of the cells as calculations read it: as the file has them, or as they are now. */
export class CellReader implements Values {
  /** What was read, by sheet, column and row. */
  private columns: Map<number, Scalar[]>[] = [];
  private ranges = new Map<string, Matrix>();
  private rememberedCells = 0;

  constructor(
    private readonly grids: Grids,
    private readonly state: 'file' | 'now',
    private readonly facts: FormulaFacts,
    private readonly work: Work,
  ) {
    this.columns = grids.map(() => new Map());
  }

  spillZone(sheet: number, row: number, column: number): Zone {
    return this.facts.spillZone(sheet, row, column);
  }

  isSubtotal(sheet: number, row: number, column: number): boolean {
    return this.facts.isSubtotal(sheet, row, column);
  }

  isHidden(sheet: number, row: number): boolean {
    return this.grids[sheet]?.file.hiddenRows.has(row) ?? false;
  }

  cell(sheet: number, row: number, column: number): Scalar {
    const grid = this.grids[sheet];
    if (!grid) return blank;
    const known = this.column(sheet, column);
    return (known[row] ??= this.read(grid, row, column));
  }

  private column(sheet: number, column: number): Scalar[] {
    const columns = this.columns[sheet] as Map<number, Scalar[]>;
    let known = columns.get(column);
    if (!known) columns.set(column, (known = []));
    return known;
  }

  private read(grid: SheetGrid, row: number, column: number): Scalar {
    return toScalar(this.state === 'file' ? grid.fileValue(row, column) : grid.value(row, column));
  }

  range(sheet: number, zone: Zone): Matrix {
    if (zoneSize(zone) < leastRemembered) return this.readRange(sheet, zone);
    const key = `${sheet}:${zone.top}:${zone.left}:${zone.bottom}:${zone.right}`;
    const known = this.ranges.get(key);
    if (known) return known;
    const matrix = this.readRange(sheet, zone);
    this.rememberedCells += matrix.length * (matrix[0]?.length ?? 0);
    if (this.rememberedCells > mostRemembered) {
      this.ranges.clear();
      this.rememberedCells = 0;
    }
    this.ranges.set(key, matrix);
    return matrix;
  }

  private readRange(sheet: number, zone: Zone): Matrix {
    const grid = this.grids[sheet];
    const { bottom, right } = usedPart(grid, zone);
    const [height, width] = [bottom - zone.top + 1, right - zone.left + 1];
    if (width * height > mostOfRange)
      throw new CannotCompute('It reads a range of more than eight million cells.');
    // Below the last row of the sheet all cells are blank.
    const used = Math.max(0, Math.min(height, (grid?.size().height ?? 0) - zone.top));
    this.work.spend(width * (used + height / 8));
    return Array.from({ length: width }, (_, i) => {
      const cells = new Array<Scalar>(height).fill(blank);
      if (!grid) return cells;
      const known = this.column(sheet, zone.left + i);
      for (let row = 0; row < used; row++) {
        cells[row] = known[zone.top + row] ??= this.read(grid, zone.top + row, zone.left + i);
      }
      return cells;
    });
  }
}

/** Whole columns and rows end where the sheet's cells end. */
function usedPart(grid: SheetGrid | undefined, zone: Zone): { bottom: number; right: number } {
  const [endless, wide] = [zone.bottom === MAX_ROWS - 1, zone.right === MAX_COLUMNS - 1];
  if (!endless && !wide) return zone;
  const { height, width } = grid?.size() ?? { height: 0, width: 0 };
  return {
    bottom: endless ? Math.max(zone.top, height - 1) : zone.bottom,
    right: wide ? Math.max(zone.left, width - 1) : zone.right,
  };
}

function toScalar(value: StoredValue): Scalar {
  if (value === null) return blank;
  if (isCellError(value)) {
    if (!isErrorCode(value.error)) return { value: '#VALUE!' };
    return value.message === undefined ? { value: value.error } : new OurError(value.error, value.message);
  }
  if (typeof value === 'string' && value.length > longestText)
    throw new CannotCompute('It reads a text longer than a cell can hold.');
  if (isErrorCode(value))
    throw new CannotCompute(`It reads a cell with the text ${value}, which looks like an error.`);
  return { value };
}
