import { absoluteAddress, cellAddress } from '../area.js';
import type { Action, CellsAction, CellState } from '../write/host.js';
import { encodeCells } from './encodeCells.js';
import { loadState, stateOf } from './lookAt.js';
import type { RoundTrips } from './roundTrips.js';

/** Does all actions, in order, in one round trip; gives the state of written cells right afterwards. */
export function performActions(
  actions: readonly Action[],
  trips: RoundTrips,
): Promise<(CellState | undefined)[]> {
  return trips.run(async ({ workbook }, sync) => {
    const made: Excel.Table[] = [];
    const written = actions.map((action) => queue(action, workbook, made));
    try {
      await sync();
    } catch (error) {
      await dropNameless(made, trips);
      throw error;
    }
    return written.map((range) => range && stateOf(range));
  });
}

/** A table whose name is refused stays with a name of the host's, by which nobody else would find it. */
async function dropNameless(made: readonly Excel.Table[], trips: RoundTrips): Promise<void> {
  const ids = made.flatMap((table) => idOf(table) ?? []);
  if (ids.length === 0) return;
  await trips.run(async ({ workbook }, sync) => {
    for (const id of ids) workbook.tables.getItem(id).convertToRange();
    await sync();
  });
}

/** Undefined for a table the host had not come to. */
function idOf(table: Excel.Table): string | undefined {
  try {
    return table.id;
  } catch {
    return undefined;
  }
}

function queue(
  action: Action,
  { worksheets, tables, names }: Excel.Workbook,
  made: Excel.Table[],
): Excel.Range | undefined {
  switch (action.kind) {
    case 'cells':
      return writeCells(action, worksheets.getItem(action.area.sheet).getRange(cellAddress(action.area)));
    case 'sheet':
      worksheets.add(action.name);
      return undefined;
    case 'table':
      made.push(addTable(action, tables));
      return undefined;
    case 'column':
      // One value too many or too few is refused, so the heading alone is given.
      tables.getItem(action.table).columns.add(action.position, undefined, action.heading);
      return undefined;
    case 'resize':
      tables.getItem(action.table).resize(cellAddress(action.area));
      return undefined;
    case 'name':
      names.add(action.name, `=${absoluteAddress(action.area)}`);
      return undefined;
    case 'drop sheet':
      worksheets.getItem(action.name).delete();
      return undefined;
    case 'drop table':
      tables.getItem(action.name).convertToRange();
      return undefined;
    case 'drop column':
      tables.getItem(action.table).columns.getItem(action.heading).delete();
      return undefined;
    case 'drop name':
      names.getItem(action.name).delete();
      return undefined;
  }
}

function addTable(
  { area, name }: Extract<Action, { kind: 'table' }>,
  tables: Excel.TableCollection,
): Excel.Table {
  const table = tables.add(absoluteAddress(area), true).load('id');
  table.name = name;
  return table;
}

/** Hosts measure columns in points: seven pixels a character, and five around them. */
const pointsOf = (characters: number) => (characters * 7 + 5) * 0.75;

function writeCells({ contents, formats, before, widths }: CellsAction, range: Excel.Range): Excel.Range {
  const encoded = encodeCells(contents, formats, before.formats);
  if (encoded.formatsBefore) range.numberFormat = encoded.formatsBefore;
  if (encoded.contents) range.formulas = encoded.contents;
  if (encoded.formatsAfter) range.numberFormat = encoded.formatsAfter;
  widths?.forEach((width, column) => {
    if (width !== undefined) range.getColumn(column).format.columnWidth = pointsOf(width);
  });
  return loadState(range);
}
