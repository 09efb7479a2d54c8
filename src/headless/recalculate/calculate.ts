import { cellKey, MAX_COLUMNS, zoneHolds, type Zone } from '../../sheet/address.js';
import { sheetPrefix } from '../../sheet/names.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { loadEngine, type Engine } from '../engine/engine.js';
import { Evaluator } from '../engine/evaluate.js';
import { Work } from '../engine/work.js';
import { OurFunctions } from '../engine/ourFunctions.js';
import { supportedFunctions } from '../engine/supportedFunctions.js';
import { workbookScope, type Scope } from '../../sheet/formula/scope.js';
import type { LoadedFunctions } from '../functions/scriptHost.js';
import { Calculation } from './calculation.js';
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
 * A workbook is calculated: its formulas are read, ordered by who reads whom, and walked once in that order;
 * again with wider areas where a result spills farther than was known.
 */

/** A calculated workbook, ready to report on, to write, or to evaluate more formulas over. */
export interface Calculated extends Outcome {
  scope: Scope;
  evaluator: Evaluator;
  functions: OurFunctions;
  /** Where each formula spills to now. */
  zones: (Zone | undefined)[];
}

const mostWalks = 12;

/** Calculates what hangs on our functions, on the changes, or has no value yet. */
export async function calculateWorkbook(
  workbook: CalculatedWorkbook,
  loaded: LoadedFunctions,
  changes: PlacedChange[],
): Promise<Calculated> {
  const scope = workbookScope(workbook, loaded.namespace, new Set(loaded.byName.keys()));
  const cells = allCells(workbook, scope, changes);
  const shared = {
    workbook,
    scope,
    cells,
    changes,
    engine: await loadEngine(),
    functions: new OurFunctions(loaded),
    work: new Work(workbook.sheets.reduce((sum, { cells }) => sum + (cells?.values.length ?? 0), 0)),
  };
  let covers = cells.map(({ stored }) => (stored.kind === 'plain' ? undefined : stored.ref));
  let anythingChanged = false;
  const readsAnything = cells.some(({ formula }) => formula.dynamic);
  for (let walk = 0; walk < mostWalks; walk++) {
    const { calculation, calculated } = await calculateOnce(shared, covers, anythingChanged);
    if (calculation.outgrown) covers = covers.map((cover, id) => union(cover, calculated.zones[id]));
    else if (readsAnything && !anythingChanged && calculation.changed) anythingChanged = true;
    else return calculated;
  }
  throw new WorkbookRefused(
    'The results that spill over cells do not settle: each depends on where another ends.',
  );
}

function allCells(workbook: CalculatedWorkbook, scope: Scope, changes: PlacedChange[]): FormulaCell[] {
  const replaced = new Set(changes.map(({ sheet, row, column }) => `${sheet}:${cellKey(row, column)}`));
  const cells = readFormulaCells(workbook, scope, supportedFunctions, (sheet, key) =>
    replaced.has(`${sheet}:${key}`),
  );
  for (const { sheet, row, column } of changes) cells.push(replacedCell(sheet, row, column));
  return cells;
}

interface Shared {
  workbook: CalculatedWorkbook;
  scope: Scope;
  cells: FormulaCell[];
  changes: PlacedChange[];
  engine: Engine;
  functions: OurFunctions;
  work: Work;
}

async function calculateOnce(
  shared: Shared,
  covers: (Zone | undefined)[],
  anythingChanged: boolean,
): Promise<{ calculation: Calculation; calculated: Calculated }> {
  const { workbook, cells, engine, functions, scope, work } = shared;
  const grids = openGrids(workbook);
  applyChanges(grids, shared.changes);
  const formulaIndex = new FormulaIndex(workbook.sheets.length, cells, covers);
  const graph = new Graph(cells, formulaIndex);
  const zones = cells.map(({ stored }) => stored.ref);
  const evaluator = new Evaluator(
    engine,
    functions,
    new CellReader(grids, 'now', formulaFacts(cells, formulaIndex, zones), work),
    work,
  );
  const fileZones = cells.map(({ stored }) => stored.ref);
  const file = new Evaluator(
    engine,
    functions,
    new CellReader(grids, 'file', formulaFacts(cells, formulaIndex, fileZones), work),
    work,
  );
  const calculation = new Calculation({
    cells,
    sheetNames: workbook.sheets.map(({ name }) => sheetPrefix(name)),
    graph,
    order: calculationOrder(graph.reads),
    grids,
    now: evaluator,
    file,
    work,
    zones,
    covers,
    owns: ownership(cells, formulaIndex),
    anythingChanged,
  });
  calculation.run(false);
  while (calculation.waits && (await functions.settle())) calculation.run(true);
  const { calculated, pinned, stale } = calculation;
  const outcome = { workbook, cells, grids: grids as Grids, calculated, pinned, stale };
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
