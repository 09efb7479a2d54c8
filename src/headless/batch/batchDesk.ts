import { mkdir } from 'node:fs/promises';
import path from 'node:path';
import { workbookScope } from '../../sheet/formula/scope.js';
import { openWorkbook } from '../../xlsx/workbook.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { stampPlace } from '../book/bookOfFile.js';
import { cannotBeWritten, checkTarget, writeTarget } from '../command/target.js';
import { nodeCodec } from '../files/nodeCodec.js';
import { readWorkbookFile, typedPath } from '../files/readFile.js';
import { builtFunctions } from '../functions/builtFunctions.js';
import type { LoadedFunctions } from '../functions/scriptHost.js';
import { calculateWorkbook, type Calculated } from '../recalculate/calculate.js';
import { recalculateWorkbook } from '../recalculate/recalculate.js';
import { makeReport, type RecalcReport } from '../recalculate/report.js';
import { refuseLinks } from './batchFiles.js';
import { changedAt, isNewer, reportBefore, type ShopReport, workbookBefore } from './doneBefore.js';
import type { FileJob, FileOutcome, FileResult } from './fileOutcome.js';
import { verdictNews } from './verdictNews.js';

/** What a batch needs besides its files. */
export interface BatchSetting {
  /** The folder of the built functions. */
  folder: string;
  /** The folder of the results. */
  out: string;
  /** A workbook whose shop takes the place of each file's own. */
  shop?: string | undefined;
}

/** What makes results beside files and shop: our functions, and the program of the threads, which calculates. */
const programs = ['functions.js', 'functions.json', 'batch.mjs'];

type BatchDesk = (job: FileJob) => Promise<FileOutcome>;

/** Opens what all files share. Throws {@link WorkbookRefused} for a shop that cannot be read. */
export async function batchDesk({ folder, out, shop }: BatchSetting): Promise<BatchDesk> {
  const functions = await builtFunctions(folder);
  const stamp = shop === undefined ? undefined : await stampOf(shop, functions);
  let since = shop === undefined ? 0 : await changedAt(typedPath(shop));
  for (const name of programs) since = Math.max(since, await changedAt(path.join(folder, name)));
  return async (job) => {
    const { source, target } = job;
    try {
      const before =
        !job.again &&
        (await isNewer(job, since)) &&
        (stamp === undefined ? await workbookBefore(job) : await reportBefore(job, stamp));
      if (before) return { in: source, out: target, state: 'done before', ...before };
      const { bytes, result } =
        stamp === undefined
          ? await recalculated(source, functions)
          : await checkedAgainst(stamp, source, functions);
      await checkTarget(source, target);
      await refuseLinks(target, out);
      await makeFolder(target);
      await writeTarget(source, target, bytes);
      return { in: source, out: target, state: 'done', ...result };
    } catch (error) {
      if (!(error instanceof WorkbookRefused)) throw error;
      return { in: source, state: 'refused', error: error.message };
    }
  };
}

async function recalculated(source: string, functions: LoadedFunctions) {
  const { bytes, report, calculated } = await recalculateWorkbook(await readWorkbookFile(source), functions);
  return { bytes, result: outcomeOf(calculated, report) };
}

/**
 * Checks a file against the shop of a stamp. What comes of it is a report: a copy of the workbook would show its own
 * presses beside verdicts of others.
 */
async function checkedAgainst(stamp: string, source: string, functions: LoadedFunctions) {
  const workbook = openWorkbook(await readWorkbookFile(source), nodeCodec);
  const place = stampPlace(workbookScope(workbook, functions.namespace, new Set(functions.byName.keys())));
  if (!place) throw new WorkbookRefused(`${source} has no cell named ShopStamp to check with another shop.`);
  const { sheet, zone } = place;
  const change = { sheet, row: zone.top, column: zone.left, value: stamp };
  const calculated = await calculateWorkbook(workbook, functions, [change]);
  const result = outcomeOf(calculated, makeReport(calculated));
  const report: ShopReport = { in: source, shop: stamp, ...result };
  return { bytes: new TextEncoder().encode(`${JSON.stringify(report, null, 2)}\n`), result };
}

function outcomeOf(calculated: Calculated, report: Omit<RecalcReport, 'milliseconds'>): FileResult {
  const { workbook, grids } = calculated;
  const verdicts = verdictNews(workbook, (position) => {
    const grid = grids[position];
    if (!grid) return undefined;
    const { rows, columns, values } = grid.file;
    return {
      width: grid.size().width,
      value: (row, column) => grid.value(row, column),
      *cells() {
        for (const [at, now] of grid.now.entries())
          yield [rows[at] ?? 0, columns[at] ?? 0, values[at] ?? null, now];
        for (const [row, column, now] of grid.extraCells()) yield [row, column, null, now];
      },
    };
  });
  const { calculated: formulas, changed, pinned, stale, errors } = report;
  return {
    verdicts,
    calculated: formulas,
    changed,
    pinned: pinned.length,
    stale: stale.length,
    errors: errors.length,
  };
}

/** The stamp of a workbook's shop; from then on the functions know the shop by it. */
async function stampOf(shop: string, functions: LoadedFunctions): Promise<string> {
  const workbook = openWorkbook(await readWorkbookFile(shop), nodeCodec);
  const { scope, grids } = await calculateWorkbook(workbook, functions, []);
  const place = stampPlace(scope);
  const stamp = place && grids[place.sheet]?.value(place.zone.top, place.zone.left);
  if (typeof stamp !== 'string')
    throw new WorkbookRefused(`${shop} has no cell named ShopStamp with a shop that can be read.`);
  return stamp;
}

async function makeFolder(target: string): Promise<void> {
  try {
    await mkdir(path.dirname(typedPath(target)), { recursive: true });
  } catch (error) {
    throw cannotBeWritten(target, error);
  }
}
