import { absoluteAddress, cellAddress } from '../area.js';
import {
  type Action,
  type ActionOf,
  type CellsAction,
  type CellState,
  doAction,
  type Primitives,
} from '../writeHost.js';
import { ColumnWidths } from './columnWidths.js';
import { encodeCells } from './encodeCells.js';
import { loadState, stateOf } from './lookAt.js';
import type { RoundTrips } from './roundTrips.js';

/**
 * Does all actions, in order, in one round trip; gives the state of written cells right afterwards. Columns that come
 * among others take one more before.
 */
export function performActions(
  actions: readonly Action[],
  trips: RoundTrips,
): Promise<(CellState | undefined)[]> {
  return trips.run(async ({ workbook }, sync) => {
    const made: Excel.Table[] = [];
    const widths = await ColumnWidths.before(actions, workbook.worksheets, sync);
    const primitives = primitivesOf(workbook, made, widths);
    const written = actions.map((action) => doAction(primitives, action));
    try {
      await sync();
    } catch (error) {
      await dropNameless(made, trips);
      throw error;
    }
    return written.map((range) => (range ? stateOf(range) : undefined));
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

/** Written cells are read back; the other kinds answer nothing. */
function primitivesOf(
  { worksheets, tables, names }: Excel.Workbook,
  made: Excel.Table[],
  widths: ColumnWidths,
): Primitives<Excel.Range | void> {
  return {
    cells: (action) =>
      writeCells(action, worksheets.getItem(action.area.sheet).getRange(cellAddress(action.area))),
    sheet: ({ name }) => void worksheets.add(name),
    table: (action) => void made.push(addTable(action, tables)),
    // One value too many or too few is refused, so the heading alone is given.
    column(action) {
      tables.getItem(action.table).columns.add(action.position, undefined, action.heading);
      widths.follow(action, worksheets);
    },
    resize: ({ table, area }) => tables.getItem(table).resize(cellAddress(area)),
    name: ({ name, area }) => void names.add(name, `=${absoluteAddress(area)}`),
    'drop sheet': ({ name }) => worksheets.getItem(name).delete(),
    'drop table': ({ name }) => void tables.getItem(name).convertToRange(),
    'drop column'(action) {
      tables.getItem(action.table).columns.getItem(action.heading).delete();
      widths.follow(action, worksheets);
    },
    unmerge({ area, isCentered }) {
      const range = worksheets.getItem(area.sheet).getRange(cellAddress(area));
      range.unmerge();
      // Text over several columns stays in the middle of them, as it was.
      if (isCentered && area.rows === 1) range.format.horizontalAlignment = 'CenterAcrossSelection';
    },
    merge({ area, isCentered }) {
      const range = worksheets.getItem(area.sheet).getRange(cellAddress(area));
      range.merge(false);
      if (isCentered) range.format.horizontalAlignment = 'Center';
    },
    'drop name': ({ name }) => names.getItem(name).delete(),
  };
}

function addTable({ area, name, keepsLook }: ActionOf<'table'>, tables: Excel.TableCollection): Excel.Table {
  const table = tables.add(absoluteAddress(area), true).load('id');
  table.name = name;
  // The usual style turns headings white, and paints rows.
  if (keepsLook) {
    table.style = 'TableStyleLight1';
    table.showBandedRows = false;
  }
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
