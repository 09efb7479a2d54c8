import { openWorkbook, type Sheet } from '../../xlsx/workbook.js';
import { sameStored } from '../../sheet/cellValue.js';
import { sameZone } from '../../sheet/address.js';
import { writeWorkbook } from '../../xlsx/writeWorkbook.js';
import type { CellChange } from '../../xlsx/writeCell.js';
import { nodeCodec } from '../files/nodeCodec.js';
import type { LoadedFunctions } from '../functions/scriptHost.js';
import { calculateWorkbook, type Calculated } from './calculate.js';
import { placeChanges, type InputChange } from './changes.js';
import type { FormulaCell } from './formulaCells.js';
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
function cellChanges({ workbook, cells, grids, zones }: Calculated): Map<Sheet, CellChange[]> {
  const replaced = new Set(cells.filter((cell) => cell.replaced).map(place));
  const refs = new Map<string, CellChange['ref']>();
  cells.forEach((cell, id) => {
    const zone = zones[id];
    if (cell.stored.kind === 'dynamic' && zone && cell.stored.ref && !sameZone(zone, cell.stored.ref)) {
      refs.set(place(cell), zone);
    }
  });
  const changes = new Map<Sheet, CellChange[]>();
  workbook.sheets.forEach((sheet, position) => {
    const grid = grids[position];
    if (!grid) return;
    const list: CellChange[] = [];
    const add = (row: number, column: number, value: CellChange['value'], changed: boolean) => {
      if (!changed && refs.size === 0) return;
      const key = place({ sheet: position, row, column });
      const ref = refs.get(key);
      if (!changed && !ref) return;
      list.push({
        row,
        column,
        value,
        ...(ref && { ref }),
        ...(replaced.has(key) && { replacesFormula: true }),
      });
    };
    const { rows, columns, values } = grid.file;
    grid.now.forEach((value, i) => {
      add(rows[i] as number, columns[i] as number, value, !sameStored(value, values[i] ?? null));
    });
    for (const [row, column, value] of grid.extraCells()) add(row, column, value, true);
    if (list.length > 0) changes.set(sheet, list);
  });
  return changes;
}

const place = ({ sheet, row, column }: Pick<FormulaCell, 'sheet' | 'row' | 'column'>) =>
  `${sheet}:${row}:${column}`;
