import { cellAddress, cellOf, overlap } from '../area.js';
import { type Content, sameContent } from '../content.js';
import type { Sheet } from '../reading.js';
import { WorkbookError } from '../workbookError.js';
import { actionsFor } from './actions.js';
import type { CellsAction, Look, Planned, WriteHost } from '../writeHost.js';
import { kindOf } from './kinds/kinds.js';
import { lookInSlices } from './lookInSlices.js';
import type { Overwrite, Step, WritePlan } from '../step.js';

/** A plan and what it comes to; the actions know what the cells held when it was made. */
export interface PlanMade {
  plan: WritePlan;
  actions: readonly Planned[];
}

/** Looks at everything the steps touch, in one round trip, and describes what would change. */
export async function makePlan(steps: readonly Step[], host: WriteHost): Promise<PlanMade> {
  for (const step of steps) kindOf(step).refuseShape(step);
  refuseOverlap(steps);
  const newSheets = new Set(steps.flatMap((step) => (step.kind === 'sheet' ? step.name : [])));
  const sheets = [...new Set(steps.flatMap((step) => ('area' in step ? step.area.sheet : [])))].filter(
    (name) => !newSheets.has(name),
  );
  const newTables = new Set(steps.flatMap((step) => (step.kind === 'table' ? step.name.toLowerCase() : [])));
  const perStep = steps.map((step) => lookFor(step, newSheets, newTables));
  const looks = [
    ...sheets.map((name): Look => ({ look: 'sheet', name })),
    ...perStep.flatMap((look) => look ?? []),
  ];
  const seen = await lookInSlices(looks, host);
  const found = seen.splice(0, sheets.length) as (Sheet | undefined)[];
  sheets.forEach((name, at) => found[at] ?? refuseMissing(name));
  const actions = actionsFor(
    steps,
    perStep.map((look) => (look ? seen.shift() : undefined)),
  );
  const written = actions.filter((action) => action.kind === 'cells');
  const plan = {
    steps,
    overwrites: written.flatMap(overwrites),
    formatted: count(written, formatted),
    cells: count(written, ({ area }) => area.rows * area.columns),
    protectedSheets: found.filter((sheet): sheet is Sheet => sheet?.protected === true),
  };
  return { plan, actions };
}

/** Cells of a sheet that the plan makes are not there to be looked at, nor is a table that it makes. */
function lookFor(
  step: Step,
  newSheets: ReadonlySet<string>,
  newTables: ReadonlySet<string>,
): Look | undefined {
  if (step.kind === 'column' && newTables.has(step.table.toLowerCase())) return undefined;
  if (step.kind === 'cells' && newSheets.has(step.area.sheet)) return undefined;
  return kindOf(step).look(step);
}

function refuseMissing(sheet: string): never {
  throw new WorkbookError('missing', `There is no sheet "${sheet}".`);
}

/** Two steps of one plan may not write the same cell: neither preview nor taking back would be right. */
function refuseOverlap(steps: readonly Step[]): void {
  const areas = steps.flatMap((step) => (step.kind === 'cells' ? step.area : []));
  const twice = areas.find((area, at) => areas.slice(0, at).some((other) => overlap(area, other)));
  if (twice) throw new WorkbookError('failed', `Two steps of one plan write ${cellAddress(twice)}.`);
}

function overwrites({ area, contents, before }: CellsAction): Overwrite[] {
  return contents.flatMap((row, at) =>
    row.flatMap((becomes, column) => {
      const holds: Content = before.contents[at]?.[column] ?? null;
      const harmless = becomes === undefined || holds === null || sameContent(holds, becomes);
      const format = before.formats[at]?.[column] ?? 'General';
      return harmless ? [] : { cell: cellOf(area, at, column), holds, becomes, format };
    }),
  );
}

function formatted({ contents, formats, before }: CellsAction): number {
  return count(formats, (row, at) =>
    count(row, (format, column) => {
      const alone = contents[at]?.[column] === undefined;
      const holds: Content = before.contents[at]?.[column] ?? null;
      return alone && holds !== null && format !== undefined && format !== before.formats[at]?.[column]
        ? 1
        : 0;
    }),
  );
}

function count<Item>(items: readonly Item[], of: (item: Item, at: number) => number): number {
  return items.reduce((sum, item, at) => sum + of(item, at), 0);
}
