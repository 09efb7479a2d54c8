import path from 'node:path';
import { parseArgs } from 'node:util';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { readWorkbookFile } from '../files/readFile.js';
import { builtFunctions } from '../functions/builtFunctions.js';
import { recalculateWorkbook } from '../recalculate/recalculate.js';
import type { RecalcReport } from '../recalculate/report.js';
import { standard, wrongCall, type CommandSetting } from './output.js';
import { type BatchCall, recalcBatch } from './recalcBatch.js';
import { checkTarget, listed, writeTarget } from './target.js';

const usage =
  'Usage: npm run --silent recalc -- IN.xlsx [OUT.xlsx] [--json]\n' +
  '       npm run --silent recalc -- FILES and FOLDERS --out FOLDER [--jobs N] [--again] [--shop SHOP.xlsx] [--json]\n';

interface Call {
  source: string;
  target: string;
  json: boolean;
}

/** Recalculates a workbook file. 0: done, 1: unreadable or refused, 2: wrong call, 3: done, some cells are stale. */
export async function recalc(argv: string[], setting: CommandSetting = standard): Promise<number> {
  const call = readCall(argv);
  if (typeof call === 'string') {
    setting.err(`${call}\n${usage}`);
    return 2;
  }
  if ('files' in call) return recalcBatch(call, setting);
  try {
    const bytes = await readWorkbookFile(call.source);
    await checkTarget(call.source, call.target);
    const functions = await builtFunctions(setting.folder);
    const { bytes: written, report } = await recalculateWorkbook(bytes, functions);
    await writeTarget(call.source, call.target, written);
    setting.out(
      call.json
        ? `${JSON.stringify({ in: call.source, out: call.target, ...report }, null, 2)}\n`
        : summary(call, report),
    );
    return report.stale.length > 0 ? 3 : 0;
  } catch (error) {
    if (!(error instanceof WorkbookRefused)) throw error;
    setting.err(`${error.message}\n`);
    if (call.json) setting.out(`${JSON.stringify({ in: call.source, error: error.message })}\n`);
    return 1;
  }
}

function readCall(argv: string[]): Call | BatchCall | string {
  try {
    const flag = { type: 'boolean', default: false } as const;
    const text = { type: 'string' } as const;
    const { values, positionals } = parseArgs({
      args: argv,
      options: { json: flag, again: flag, out: text, jobs: text, shop: text },
      allowPositionals: true,
    });
    const [source, target] = positionals;
    const { json, out, again, shop } = values;
    if (source === undefined) return 'Which workbook? Name the file to recalculate.';
    if (out === undefined) {
      if (again || values.jobs !== undefined || shop !== undefined)
        return 'Where to? --jobs, --again and --shop need --out with a folder for the results.';
      if (positionals.length > 2)
        return 'Name one workbook and at most one file to write, or a folder for the results with --out.';
      return { source, target: target ?? beside(source), json };
    }
    const jobs = jobsOf(values.jobs ?? '1');
    if (jobs === undefined) return `--jobs takes a number from 1 to ${mostJobs}, not ${values.jobs ?? ''}.`;
    return { files: positionals, out, jobs, again, shop, json };
  } catch (error) {
    return wrongCall(error);
  }
}

const mostJobs = 64;

function jobsOf(text: string): number | undefined {
  const jobs = /^\d{1,2}$/.test(text) ? Number(text) : 0;
  return jobs >= 1 && jobs <= mostJobs ? jobs : undefined;
}

/** `quote.xlsx` becomes `quote.recalculated.xlsx`, in the same folder. */
function beside(source: string): string {
  const { dir, name, ext } = path.parse(source);
  return path.join(dir, `${name}.recalculated${ext || '.xlsx'}`);
}

const jsonListsAll = ' (--json lists all)';

function summary({ target }: Call, report: RecalcReport): string {
  const { calculated, changed, pinned, stale, errors, milliseconds } = report;
  const lines = [
    `${calculated} formulas calculated, ${changed} stored values changed, in ${milliseconds.total} ms.`,
    ...listed(
      'cells show an error',
      errors,
      ({ cell, code, message }) => `${cell}  ${code}  ${message ?? ''}`.trimEnd(),
      jsonListsAll,
    ),
    ...listed('formulas are not evaluated here', pinned, ({ cell, why }) => `${cell}  ${why}`, jsonListsAll),
    ...listed(
      'cells may be stale: let the spreadsheet program calculate them',
      stale,
      ({ cell, why }) => `${cell}  ${why}`,
      jsonListsAll,
    ),
    `Written to ${target}.`,
  ];
  return `${lines.join('\n')}\n`;
}
