import { openWorkbook, type Sheet } from '../../xlsx/workbook.js';
import { sameStored } from '../../sheet/cellValue.js';
import { cellKey, sameZone } from '../../sheet/address.js';
import { writeWorkbook } from '../../xlsx/writeWorkbook.js';
import type { CellChange } from '../../xlsx/writeCell.js';
import { nodeCodec } from '../files/nodeCodec.js';
import type { LoadedFunctions } from '../functions/scriptHost.js';
import { calculateWorkbook, type Calculated } from './calculate.js';
import { placeChanges, type InputChange } from './changes.js';
import type { SheetGrid } from './sheetGrid.js';
import { makeReport, type RecalcReport } from './report.js';

export interface RecalculateOptions {
  /** Cells to change first; they are changed in the written file too. */
  changes?: InputChange[];
}

/** Recalculates a workbook: our functions and what hangs on them, nothing else. The input is not touched. */
export async function recalculateWorkbook(
  bytes: Uint8Array,
  functions: LoadedFunctions,
  options: RecalculateOptions = {},
): Promise<{ bytes: Uint8Array; report: RecalcReport; calculated: Calculated }> {
  const times = [performance.now()];
  const workbook = openWorkbook(bytes, nodeCodec);
  times.push(performance.now());
  const calculated = await calculateWorkbook(
    workbook,
    functions,
    placeChanges(workbook, options.changes ?? []),
  );
  times.push(performance.now());
  const report = makeReport(calculated);
  const written = writeWorkbook(workbook, cellChanges(calculated), {
    calculateOnOpening: report.stale.length > 0,
  });
  times.push(performance.now());
  const [start, read, calculate, write] = times.map(Math.round) as [number, number, number, number];
  const milliseconds = {
    read: read - start,
    calculate: calculate - read,
    write: write - calculate,
    total: write - start,
  };
  return { bytes: written, report: { ...report, milliseconds }, calculated };
}

/** The cells whose stored value or spill range differs from the file's. */
function cellChanges({ workbook, cells, grids, zones }: Calculated): Map<Sheet, Iterable<CellChange>> {
  const special = new Map<number, Map<number, Pick<CellChange, 'ref' | 'replacesFormula'>>>();
  cells.forEach(({ sheet, row, column, stored, replaced }, id) => {
    const zone = zones[id];
    const isMoved = stored.kind === 'dynamic' && zone && stored.ref && !sameZone(zone, stored.ref);
    if (!isMoved && !replaced) return;
    const ofSheet = special.get(sheet) ?? new Map<number, Pick<CellChange, 'ref' | 'replacesFormula'>>();
    special.set(sheet, ofSheet);
    ofSheet.set(cellKey(row, column), {
      ...(isMoved && { ref: zone }),
      ...(replaced && { replacesFormula: true }),
    });
  });
  const changes = new Map<Sheet, Iterable<CellChange>>();
  workbook.sheets.forEach((sheet, position) => {
    const grid = grids[position];
    if (grid) changes.set(sheet, changesOf(grid, special.get(position)));
  });
  return changes;
}

function* changesOf(
  grid: SheetGrid,
  special: ReadonlyMap<number, Pick<CellChange, 'ref' | 'replacesFormula'>> | undefined,
): Generator<CellChange> {
  const { rows, columns, values } = grid.file;
  for (let i = 0; i < values.length; i++) {
    const [row, column, value] = [rows[i] as number, columns[i] as number, grid.now[i] ?? null];
    const more = special?.get(cellKey(row, column));
    const isSame = sameStored(value, values[i] ?? null);
    if (!isSame || more?.ref) yield { row, column, value, ...more };
  }
  for (const [row, column, value] of grid.extraCells()) yield { row, column, value };
}
