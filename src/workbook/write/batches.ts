import { isFormula } from '../content.js';
import type { Action, CellsAction } from '../writeHost.js';

/** The most one message may carry: hosts in a browser refuse 5 MB; the rest is for addresses and braces. */
const messageBytes = 4_000_000;

/** Actions that go in one message. */
export interface Batch<Each extends Action = Action> {
  actions: Each[];
  cells: number;
  bytes: number;
}

const encoder = new TextEncoder();

/**
 * Actions in messages that a host accepts, in their order: as many as fit together in one, and cells that
 * do not fit in slices of rows.
 */
export function inBatches<Each extends Action>(
  actions: readonly Each[],
  limit = messageBytes,
): Batch<Each>[] {
  const batches: Batch<Each>[] = [];
  let open: Batch<Each> | undefined;
  for (const action of actions.flatMap((each) => slices(each, limit))) {
    const size = action.kind === 'cells' ? bytesOf(action) : JSON.stringify(action).length;
    if (!open || open.bytes + size > limit) {
      open = { actions: [], cells: 0, bytes: 0 };
      batches.push(open);
    }
    open.actions.push(action);
    open.cells += action.kind === 'cells' ? action.area.rows * action.area.columns : 0;
    open.bytes += size;
  }
  return batches;
}

/** The same actions in smaller messages, for a host that takes less; the message itself where it cannot be cut. */
export function smaller<Each extends Action>(batch: Batch<Each>): Batch<Each>[] {
  // Making a sheet or table twice is no repetition, so only cells are sent again.
  if (batch.actions.some(({ kind }) => kind !== 'cells')) return [batch];
  return inBatches(batch.actions, batch.bytes / 2);
}

function slices<Each extends Action>(action: Each, limit: number): Each[] {
  if (!isCells(action) || action.area.rows === 1 || bytesOf(action) <= limit) return [action];
  const half = Math.ceil(action.area.rows / 2);
  return [
    ...slices(rowsOf(action, 0, half), limit),
    ...slices(rowsOf(action, half, action.area.rows), limit),
  ];
}

const isCells = (action: Action): action is CellsAction => action.kind === 'cells';

function rowsOf<Cells extends CellsAction>(action: Cells, from: number, to: number): Cells {
  const { area, standsAt, contents, formats, before } = action;
  return {
    ...action,
    area: { ...area, row: area.row + from, rows: to - from },
    ...(standsAt && { standsAt: { ...standsAt, row: standsAt.row + from, rows: to - from } }),
    contents: contents.slice(from, to),
    formats: formats.slice(from, to),
    before: { contents: before.contents.slice(from, to), formats: before.formats.slice(from, to) },
  };
}

/** What an action takes there or its answer takes back, whichever is more: values, formulas, formats. */
function bytesOf({ area, contents, formats, before }: CellsAction): number {
  const valueTypes = area.rows * area.columns * '"Boolean",'.length;
  return 2 * bytesOfCells(contents) + 2 * bytesOfCells(formats) + bytesOfCells(before.formats) + valueTypes;
}

function bytesOfCells(rows: readonly (readonly unknown[])[]): number {
  const plain = rows.map((row) => row.map((cell) => (isFormula(cell) ? cell.formula : (cell ?? null))));
  return encoder.encode(JSON.stringify(plain)).length;
}
