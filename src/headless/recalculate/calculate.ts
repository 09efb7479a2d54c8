import { cellKey, MAX_COLUMNS, zoneHolds, type Zone } from '../../sheet/address.js';
import { sheetPrefix } from '../../sheet/names.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { NativeFunctions } from '../engine/engine.js';
import { Evaluator } from '../engine/evaluate.js';
import { Work } from '../engine/work.js';
import { OurFunctions } from '../engine/ourFunctions.js';
import { supportedFunctions } from '../engine/supportedFunctions.js';
import type { Formula } from '../../sheet/formula/nodes.js';
import { workbookScope, type Scope } from '../../sheet/formula/scope.js';
import type { LoadedFunctions } from '../functions/scriptHost.js';
import { Calculation, dueNodes } from './calculation.js';
import { applyChanges, type PlacedChange } from './changes.js';
import { readFormulaCells, replacedCell, type FormulaCell, type CalculatedWorkbook } from './formulaCells.js';
import { Graph } from './graph.js';
import { openGrids, type Grids } from './sheetGrid.js';
import { CellReader, type FormulaFacts } from './cellReader.js';
import { calculationOrder } from './calculationOrder.js';
import { FormulaIndex } from './formulaIndex.js';
import type { Outcome } from './report.js';
import { zoneOfCell } from './spill.js';

/*
 * A workbook is calculated: its formulas are read, ordered by who reads whom, and walked once in that order. Where a
 * result spills farther than was known, the walk goes on with those that read the cells it reached.
 */

/** A calculated workbook, ready to report on, to write, or to evaluate more formulas over. */
export interface Calculated extends Outcome {
  scope: Scope;
  evaluator: Evaluator;
  functions: OurFunctions;
  /** Where each formula spills to now. */
  zones: (Zone | undefined)[];
  /** How many texts of formulas were read: one for each form. */
  parses: number;
}

const mostWalks = 12;

/** Calculates what hangs on our functions, on the changes, or has no value yet. */
export async function calculateWorkbook(
  workbook: CalculatedWorkbook,
  loaded: LoadedFunctions,
  changes: PlacedChange[],
): Promise<Calculated> {
  const scope = workbookScope(workbook, loaded.namespace, new Set(loaded.byName.keys()));
  const { cells, parses } = allCells(workbook, scope, changes);
  const native = new NativeFunctions();
  await native.loadFor(evaluated(cells));
  const shared = {
    workbook,
    scope,
    cells,
    native,
    functions: new OurFunctions(loaded),
    work: new Work(workbook.sheets.reduce((sum, { cells }) => sum + (cells?.values.length ?? 0), 0)),
  };
  let covered: Covered = {
    covers: cells.map(({ stored }) => (stored.kind === 'plain' ? undefined : stored.ref)),
    anythingChanged: false,
  };
  const fresh = (): Walked => ({
    grids: changedGrids(workbook, changes),
    zones: cells.map(({ stored }) => stored.ref),
  });
  const readsAnything = cells.some(({ formula }) => formula.dynamic);
  let walked = fresh();
  for (let walk = 0; walk < mostWalks; walk++) {
    const { calculation, calculated } = await walkOnce(shared, covered, walked, fresh);
    const { outgrown, blocked } = calculation;
    const isMore = readsAnything && !covered.anythingChanged && calculation.changed;
    if (outgrown.size > 0)
      covered = { ...covered, covers: widened(covered.covers, outgrown, calculated.zones) };
    else if (isMore) covered = { ...covered, anythingChanged: true };
    else return { ...calculated, parses };
    // Which of two results is in the other's way hangs on the order of all.
    walked = blocked ? fresh() : { grids: calculated.grids, zones: calculated.zones, before: calculation };
  }
  throw new WorkbookRefused(
    'The results that spill over cells do not settle: each depends on where another ends.',
  );
}

function allCells(
  workbook: CalculatedWorkbook,
  scope: Scope,
  changes: PlacedChange[],
): { cells: FormulaCell[]; parses: number } {
  const replaced = new Set(changes.map(({ sheet, row, column }) => `${sheet}:${cellKey(row, column)}`));
  const { cells, parses } = readFormulaCells(workbook, scope, supportedFunctions, (sheet, key) =>
    replaced.has(`${sheet}:${key}`),
  );
  for (const { sheet, row, column } of changes) cells.push(replacedCell(sheet, row, column));
  return { cells, parses };
}

/** The formulas that are not pinned from the start. */
function* evaluated(cells: readonly FormulaCell[]): Generator<Formula> {
  for (const { formula, pin } of cells) if (pin === undefined) yield formula;
}

interface Shared {
  workbook: CalculatedWorkbook;
  scope: Scope;
  cells: FormulaCell[];
  native: NativeFunctions;
  functions: OurFunctions;
  work: Work;
}

/** How far the calculation has come. */
interface Walked {
  grids: Grids;
  /** Where each formula spills to now. */
  zones: (Zone | undefined)[];
  /** The walk that it goes on from. */
  before?: Calculation;
}

function changedGrids(workbook: CalculatedWorkbook, changes: PlacedChange[]): Grids {
  const grids = openGrids(workbook);
  applyChanges(grids, changes);
  return grids;
}

/** The cells formulas are known to fill, with those that results have now reached. */
const widened = (covers: Covered['covers'], outgrown: ReadonlySet<number>, zones: Walked['zones']) =>
  covers.map((cover, id) => (outgrown.has(id) ? union(cover, zones[id]) : cover));

/** What a walk counts with. */
interface Covered {
  /** The cells each array formula is known to fill. */
  covers: (Zone | undefined)[];
  /** Formulas that find out what they read when calculated count as reading something that changed. */
  anythingChanged: boolean;
}

/**
 * Walks all formulas; after a walk before, only those that read what was not known then. Where one of these spills, all
 * are walked from the start: what is in its way hangs on the order of all.
 */
async function walkOnce(
  shared: Shared,
  { covers, anythingChanged }: Covered,
  walked: Walked,
  fresh: () => Walked,
): Promise<{ calculation: Calculation; calculated: Omit<Calculated, 'parses'> }> {
  const { workbook, cells, native, functions, scope, work } = shared;
  const formulaIndex = new FormulaIndex(workbook.sheets.length, cells, covers);
  const graph = new Graph(cells, formulaIndex);
  const order = calculationOrder(graph.reads);
  const due = walked.before && dueNodes({ graph, order, cells, anythingChanged }, walked.before);
  const spillsAgain = due && cells.some(({ stored }, id) => due[id] === 1 && stored.kind !== 'plain');
  const { grids, zones, before } = spillsAgain ? fresh() : walked;
  const evaluator = new Evaluator(
    native,
    functions,
    new CellReader(grids, 'now', formulaFacts(cells, formulaIndex, zones), work),
    work,
  );
  const fileZones = cells.map(({ stored }) => stored.ref);
  const file = new Evaluator(
    native,
    functions,
    new CellReader(grids, 'file', formulaFacts(cells, formulaIndex, fileZones), work),
    work,
  );
  const input = {
    cells,
    sheetNames: workbook.sheets.map(({ name }) => sheetPrefix(name)),
    graph,
    order,
    grids,
    now: evaluator,
    file,
    work,
    zones,
    covers,
    owns: ownership(cells, formulaIndex),
    anythingChanged,
  };
  const calculation = new Calculation(input, before && due && { before, due });
  calculation.run(false);
  while (calculation.waits && (await functions.settle())) calculation.run(true);
  const { calculated, pinned, stale } = calculation;
  const outcome = { workbook, cells, grids, calculated, pinned, stale };
  return { calculation, calculated: { ...outcome, scope, evaluator, functions, zones } };
}

/** Whether the file's value in a cell belongs to the spill of a formula. */
function ownership(cells: FormulaCell[], formulaIndex: FormulaIndex): (id: number, key: number) => boolean {
  return (id, key) => {
    const { sheet, stored } = cells[id] as FormulaCell;
    const [row, column] = [Math.floor(key / MAX_COLUMNS), key % MAX_COLUMNS];
    return (
      stored.ref !== undefined &&
      zoneHolds(stored.ref, row, column) &&
      formulaIndex.of(sheet, row, column) === id
    );
  };
}

function formulaFacts(
  cells: FormulaCell[],
  formulaIndex: FormulaIndex,
  zones: (Zone | undefined)[],
): FormulaFacts {
  return {
    spillZone(sheet, row, column) {
      const id = formulaIndex.of(sheet, row, column);
      const cell = { top: row, bottom: row, left: column, right: column };
      return id === undefined ? cell : (zones[id] ?? zoneOfCell(cells[id] as FormulaCell));
    },
    isSubtotal(sheet, row, column) {
      const functions = cells[formulaIndex.of(sheet, row, column) ?? -1]?.formula.functions;
      return functions !== undefined && (functions.has('SUBTOTAL') || functions.has('AGGREGATE'));
    },
  };
}

function union(a: Zone | undefined, b: Zone | undefined): Zone | undefined {
  if (!a || !b) return a ?? b;
  return {
    top: Math.min(a.top, b.top),
    left: Math.min(a.left, b.left),
    bottom: Math.max(a.bottom, b.bottom),
    right: Math.max(a.right, b.right),
  };
}
