import { parseArgs } from 'node:util';
import { type BookStock, stockOfBook } from '../../print/stock/stockOfBook.js';
import { stockText } from '../../print/stock/stockText.js';
import { openWorkbook } from '../../xlsx/workbook.js';
import { PlannerFailed, PlanQueue } from '../../planner/planQueue.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { bookOfFile } from '../book/bookOfFile.js';
import { nodeCodec } from '../files/nodeCodec.js';
import { readWorkbookFile } from '../files/readFile.js';
import { builtFunctions } from '../functions/builtFunctions.js';
import { calculateWorkbook } from '../recalculate/calculate.js';
import { plannerThreads } from '../planner/plannerThreads.js';
import { withStockSheet } from '../stock/withStockSheet.js';
import { type CommandSetting, standard, wrongCall } from './output.js';
import { checkTarget, writeTarget } from './target.js';

const usage =
  'Usage: npm run --silent stock -- IN.xlsx [OUT.xlsx] [--json] [--common-lengths] [--without-failing]\n' +
  '         [--without-off-press] [--without-hidden] [--replace]\n' +
  'Without OUT.xlsx the lists are printed.\n';

interface Call {
  source: string;
  target: string | undefined;
  json: boolean;
  replace: boolean;
  commonLengths: boolean;
  withoutFailing: boolean;
  withoutOffPress: boolean;
  withoutHidden: boolean;
}

/**
 * Plans the bars of a workbook's parts lists, and adds the plan's sheet to a copy. 0: done, 1: unreadable or refused,
 * 2: wrong call, 3: done, some rows are not planned or short, or cells may be stale.
 */
export async function stock(argv: string[], setting: CommandSetting = standard): Promise<number> {
  const call = readCall(argv);
  if (typeof call === 'string') {
    setting.err(`${call}\n${usage}`);
    return 2;
  }
  const { source, target } = call;
  try {
    const bytes = await readWorkbookFile(source);
    if (target !== undefined) await checkTarget(source, target);
    const functions = await builtFunctions(setting.folder);
    const calculated = await calculateWorkbook(openWorkbook(bytes, nodeCodec), functions, []);
    const onSection = (section: string, at: number, of: number) =>
      setting.progress?.(`Planning ${section}, ${at} of ${of} …`);
    const { plan } = new PlanQueue(plannerThreads(setting.folder ?? import.meta.dirname));
    const made = await stockOfBook(bookOfFile(calculated), {
      ...call,
      onSection,
      plan: (problem) => plan(problem),
    });
    setting.progress?.('');
    if ('problem' in made) throw new WorkbookRefused(made.problem);
    const stale = calculated.stale.size;
    const written =
      target === undefined ? undefined : withStockSheet(openWorkbook(bytes, nodeCodec), made.sheet, call);
    if (written && target !== undefined) await writeTarget(source, target, written.bytes);
    setting.out(
      call.json ? `${JSON.stringify(made.json, null, 2)}\n` : readable(made, target, written?.name),
    );
    if (stale > 0) setting.err(`${stale} cells may be stale: let the spreadsheet program calculate them.\n`);
    return made.isWhole && stale === 0 ? 0 : 3;
  } catch (error) {
    setting.progress?.('');
    if (!(error instanceof WorkbookRefused) && !(error instanceof PlannerFailed)) throw error;
    setting.err(`${error.message}\n`);
    if (call.json) setting.out(`${JSON.stringify({ in: source, error: error.message })}\n`);
    return 1;
  }
}

function readCall(argv: string[]): Call | string {
  const flag = { type: 'boolean', default: false } as const;
  try {
    const { values, positionals } = parseArgs({
      args: argv,
      options: {
        json: flag,
        replace: flag,
        'common-lengths': flag,
        'without-failing': flag,
        'without-off-press': flag,
        'without-hidden': flag,
      },
      allowPositionals: true,
    });
    const [source, target] = positionals;
    if (source === undefined) return 'Which workbook? Name the file with the parts list.';
    if (positionals.length > 2) return 'Name one workbook, and at most one file to write.';
    if (values.replace && target === undefined) return 'Where to? --replace needs a file to write.';
    return {
      source,
      target,
      json: values.json,
      replace: values.replace,
      commonLengths: values['common-lengths'],
      withoutFailing: values['without-failing'],
      withoutOffPress: values['without-off-press'],
      withoutHidden: values['without-hidden'],
    };
  } catch (error) {
    return wrongCall(error);
  }
}

function readable(
  made: Exclude<BookStock, { problem: string }>,
  target: string | undefined,
  sheet: string | undefined,
): string {
  if (target === undefined) return stockText(made.sheet);
  const rest = made.isWhole ? '' : 'Some rows are not planned or short: the sheet names them.\n';
  return `${made.status}\n${rest}Written to ${target}, sheet ${sheet ?? ''}.\n`;
}
