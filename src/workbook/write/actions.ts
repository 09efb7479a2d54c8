import { sameName } from '../../sheet/names.js';
import type { Area } from '../area.js';
import type { Content } from '../content.js';
import type { Table } from '../reading.js';
import { WorkbookError } from '../workbookError.js';
import type { Action, CellState } from './host.js';
import type { Step } from '../step.js';

/** The actions that steps come to, given what was seen for each. Refuses what the host would refuse halfway. */
export function actionsFor(steps: readonly Step[], seen: readonly unknown[]): Action[] {
  const tables: Widened = new Map();
  const actions = steps.flatMap((step, at) => actionsOf(step, seen[at], tables));
  for (const step of steps) if (step.kind === 'cells') refuseMoved(step.area, tables);
  // A later column may move an earlier one, so the cells of all are written when all are there.
  return [...actions, ...[...tables.values()].flatMap(({ table, columns }) => bodies(table, columns))];
}

type ColumnStep = Extract<Step, { kind: 'column' }>;

/** Tables that get columns, as the steps so far leave them, with the leftmost column that is inserted. */
type Widened = Map<string, { table: Table; from: number; columns: ColumnStep[] }>;

function actionsOf(step: Step, seen: unknown, tables: Widened): Action[] {
  switch (step.kind) {
    case 'cells': {
      const { area } = step;
      const contents = step.contents ?? matrix(area, undefined);
      const formats = step.formats ?? matrix(area, undefined);
      const before = (seen as CellState | undefined) ?? {
        contents: matrix<Content>(area, null),
        formats: matrix(area, 'General'),
      };
      const widths = step.widths && { widths: step.widths };
      return [{ kind: 'cells', area, contents, formats, before, ...widths, fresh: seen === undefined }];
    }
    case 'sheet':
      if (seen) refuseTaken('a sheet', step.name);
      return [step];
    case 'table':
      if (seen) refuseTaken('a table', step.name);
      return [step];
    case 'name':
      if (seen) refuseTaken('a name', step.name);
      return [step];
    case 'resize':
      return [{ ...step, was: (seen as Table).area }];
    case 'column':
      return [columnAction(step, seen as Table, tables)];
  }
}

/** A table seen earlier in the plan is taken as the steps so far have left it. */
function columnAction(step: ColumnStep, seen: Table, tables: Widened): Action {
  const { table, heading, contents } = step;
  const known = tables.get(table.toLowerCase());
  const { area, headings } = known?.table ?? seen;
  const at = (name: string) => headings.findIndex((each) => sameName(each, name));
  if (at(heading) >= 0) refuseTaken(`a column of ${table}`, heading);
  const left = step.rightOf === undefined ? headings.length - 1 : at(step.rightOf);
  if (left < 0)
    throw new WorkbookError('missing', `The table "${table}" has no column "${step.rightOf ?? ''}".`);
  const rows = area.rows - 1 - (seen.hasTotals ? 1 : 0);
  if (contents.length > rows)
    throw new WorkbookError('failed', `The table "${table}" has ${rows} rows, not ${contents.length}.`);
  const position = left + 1;
  tables.set(table.toLowerCase(), {
    table: {
      ...seen,
      area: { ...area, columns: area.columns + 1 },
      headings: [...headings.slice(0, position), heading, ...headings.slice(position)],
    },
    from: Math.min(known?.from ?? Infinity, area.column + position),
    columns: [...(known?.columns ?? []), step],
  });
  return { kind: 'column', table, heading, position, seen };
}

function bodies({ area, headings }: Table, columns: readonly ColumnStep[]): Action[] {
  return columns.flatMap(({ heading, contents, format = 'General', width }): Action[] => {
    if (contents.length === 0) return [];
    const column = area.column + headings.indexOf(heading);
    const body = { ...area, row: area.row + 1, column, rows: contents.length, columns: 1 };
    // A new column takes the formats of its neighbour, so none is known and each is set.
    const before = { contents: matrix<Content>(body, null), formats: matrix(body, '') };
    const cells = contents.map((content) => [content]);
    const formats = matrix(body, format);
    const widths = width === undefined ? {} : { widths: [width] };
    return [{ kind: 'cells', area: body, contents: cells, formats, before, ...widths, fresh: true }];
  });
}

/** Cells right of a new column move with it: what was seen of them is no longer where it was. */
function refuseMoved(area: Area, tables: Widened): void {
  for (const { table, from } of tables.values()) {
    const { row, rows, sheet } = table.area;
    const beside = area.sheet === sheet && area.row < row + rows && row < area.row + area.rows;
    if (beside && area.column + area.columns > from)
      throw new WorkbookError(
        'failed',
        `The table "${table.name}" gets a column: write the cells right of it afterwards.`,
      );
  }
}

function refuseTaken(what: string, name: string): never {
  throw new WorkbookError('exists', `There is ${what} "${name}" already: choose another name.`);
}

function matrix<Value>({ rows, columns }: Area, value: Value): Value[][] {
  return Array.from({ length: rows }, () => Array.from({ length: columns }, () => value));
}
