import loadHighs, { type Highs, type InitOptions, type SparseMatrix } from 'highs';
import type {
  LinearAnswer,
  LinearColumn,
  LinearProgram,
  LinearRow,
  LinearSolver,
  WholeAnswer,
  WholeLimits,
} from '../core/stock/linearSolver.js';

/** One seed and no clock (and the build knows one thread): the same input gives the same answer. */
const steady = { output_flag: false, random_seed: 0 } as const;

/**
 * HiGHS as the solver of stock plans. Loads its WebAssembly file, which takes a moment and may fail: callers then plan
 * by steps alone.
 */
export async function loadSolver(options?: InitOptions): Promise<LinearSolver> {
  const highs = await loadHighs(options);
  return {
    open: (rows) => open(highs, rows),
    solveWhole: (rows, columns, limits) => solveWhole(highs, rows, columns, limits),
  };
}

function open(highs: Highs, rows: readonly LinearRow[]): LinearProgram {
  const model = highs.createModel(modelOf(highs, rows, []));
  model.options.set({ ...steady, presolve: 'off', solver: 'simplex', simplex_strategy: 4 });
  const run = (): LinearAnswer | undefined => {
    if (!ran(highs, () => model.run())) return undefined;
    if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return undefined;
    const { colValue, rowDual } = model.getSolution();
    const iterations = Number(model.info.get('simplex_iteration_count'));
    return { objective: model.getObjectiveValue(), columns: colValue, prices: rowDual, iterations };
  };
  return {
    add(columns) {
      const { colCost, colLower, colUpper, matrix } = modelOf(highs, rows, columns);
      model.addCols({ cost: colCost, lower: colLower, upper: colUpper, matrix });
    },
    setRows(next) {
      next.forEach(({ least, most }, row) => {
        model.changeRowBounds(row, bound(highs, least), bound(highs, most));
      });
    },
    solve() {
      const answer = run();
      if (answer) return answer;
      // A basis can go bad; from the beginning it is found again.
      model.clearSolver();
      return run();
    },
    dispose() {
      model.dispose();
    },
  };
}

function solveWhole(
  highs: Highs,
  rows: readonly LinearRow[],
  columns: readonly LinearColumn[],
  limits: WholeLimits,
): WholeAnswer {
  const { modelStatus, callbackType, solutionStatus } = highs.constants;
  const whole = { ...modelOf(highs, rows, columns), integrality: columns.map(() => 1 as const) };
  return highs.withModel(whole, (model): WholeAnswer => {
    model.options.set({
      ...steady,
      mip_rel_gap: 0,
      mip_abs_gap: limits.nearEnough,
      mip_max_nodes: limits.nodes,
      // Costs have seven digits: with the usual tolerance, two of them may count as equal.
      mip_feasibility_tolerance: 1e-9,
    });
    let iterations = 0;
    const isRun = ran(highs, () =>
      model.run({
        [callbackType.mipInterrupt](event: {
          data: { mip_total_lp_iterations?: bigint };
          interrupt: () => void;
        }) {
          iterations = Number(event.data.mip_total_lp_iterations ?? 0);
          if (iterations > limits.iterations || limits.isStopped()) event.interrupt();
        },
      }),
    );
    if (!isRun) return { status: 'stopped', columns: undefined, iterations };
    const status = model.getModelStatus();
    if (status === modelStatus.infeasible) return { status: 'none', columns: undefined, iterations };
    const isFound = model.info.get('primal_solution_status') === solutionStatus.feasible;
    const found = isFound ? model.getSolution().colValue : undefined;
    return { status: status === modelStatus.optimal ? 'best' : 'stopped', columns: found, iterations };
  });
}

/** Whether the solver came to an end: where it gives up on a program, it proves nothing, and the plans so far stand. */
function ran(highs: Highs, run: () => unknown): boolean {
  try {
    run();
    return true;
  } catch (error) {
    if (error instanceof highs.errors.HighsError && error.operation === 'run') return false;
    throw error;
  }
}

function modelOf(highs: Highs, rows: readonly LinearRow[], columns: readonly LinearColumn[]) {
  const starts = [0];
  for (const column of columns) starts.push((starts.at(-1) ?? 0) + column.rows.length);
  const matrix: SparseMatrix = {
    format: 'csc',
    numRows: rows.length,
    numCols: columns.length,
    starts: Int32Array.from(starts),
    indices: Int32Array.from(columns.flatMap((column) => column.rows)),
    values: Float64Array.from(columns.flatMap((column) => column.values)),
  };
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: Float64Array.from(columns, ({ cost }) => cost),
    colLower: new Float64Array(columns.length),
    colUpper: Float64Array.from(columns, ({ most }) => bound(highs, most)),
    rowLower: Float64Array.from(rows, ({ least }) => bound(highs, least)),
    rowUpper: Float64Array.from(rows, ({ most }) => bound(highs, most)),
    matrix,
  };
}

function bound(highs: Highs, value: number): number {
  return Number.isFinite(value) ? value : Math.sign(value) * highs.infinity;
}
