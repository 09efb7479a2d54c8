import { openWorkbook, type Sheet } from '../../xlsx/workbook.js';
import { sameStored } from '../../sheet/cellValue.js';
import { cellKey, sameZone } from '../../sheet/address.js';
import type { SheetChanges } from '../../xlsx/patchSheet.js';
import type { CellChange } from '../../xlsx/writeCell.js';
import { nodeCodec } from '../files/nodeCodec.js';
import { writeWorkbook } from '../files/writeWorkbook.js';
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
  const written = await writeWorkbook(workbook, cellChanges(calculated), {
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

type Special = Pick<CellChange, 'ref' | 'replacesFormula'>;

/** The cells whose stored value or spill range differs from the file's. */
function cellChanges({ workbook, cells, grids, zones }: Calculated): Map<Sheet, SheetChanges> {
  const special = grids.map(() => new Map<number, Special>());
  cells.forEach(({ sheet, row, column, stored, replaced }, id) => {
    const zone = zones[id];
    const isMoved = stored.kind === 'dynamic' && zone && stored.ref && !sameZone(zone, stored.ref);
    if (!isMoved && !replaced) return;
    special[sheet]?.set(cellKey(row, column), {
      ...(isMoved && { ref: zone }),
      ...(replaced && { replacesFormula: true }),
    });
  });
  const changes = new Map<Sheet, SheetChanges>();
  workbook.sheets.forEach((sheet, position) => {
    const grid = grids[position];
    if (grid) changes.set(sheet, changesOf(grid, special[position] ?? new Map()));
  });
  return changes;
}

function changesOf(grid: SheetGrid, special: ReadonlyMap<number, Special>): SheetChanges {
  const { rows, columns, values } = grid.file;
  return {
    ofCell(at) {
      const value = grid.now[at] ?? null;
      const isSame = sameStored(value, values[at] ?? null);
      if (isSame && special.size === 0) return undefined;
      const [row, column] = [rows[at] as number, columns[at] as number];
      const more = special.get(cellKey(row, column));
      return isSame && !more?.ref ? undefined : { row, column, value, ...more };
    },
    added: [...grid.extraCells()].map(([row, column, value]) => ({ row, column, value })),
  };
}
