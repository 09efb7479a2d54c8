import { parseArgs } from 'node:util';
import { openWorkbook } from '../../xlsx/workbook.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { nodeCodec } from '../files/nodeCodec.js';
import { readWorkbookFile } from '../files/readFile.js';
import { builtFunctions } from '../functions/builtFunctions.js';
import { FormulaCalculator, type FormulaResult } from '../recalculate/formulaCalculator.js';
import { standard, wrongCall, type CommandSetting } from './output.js';

const usage =
  "Usage: npm run --silent calc -- [--json] [--workbook FILE] ['=TONROW.…' …]\n" +
  'Without formulas as arguments, they are read from standard input, one per line.\n';

interface Call {
  json: boolean;
  workbook: string | undefined;
  formulas: string[];
}

/** Evaluates formulas. 0: done, 1: a formula gave an error, or the workbook is unreadable or refused, 2: wrong call. */
export async function calc(argv: string[], setting: CommandSetting = standard): Promise<number> {
  const call = await readCall(argv, setting);
  if (typeof call === 'string') {
    setting.err(`${call}\n${usage}`);
    return 2;
  }
  try {
    const functions = await builtFunctions(setting.folder);
    const workbook =
      call.workbook === undefined
        ? undefined
        : openWorkbook(await readWorkbookFile(call.workbook), nodeCodec);
    const desk = await FormulaCalculator.over(workbook, functions);
    let failed = false;
    for (const formula of call.formulas) {
      const result = await desk.evaluate(formula);
      failed ||= hasError(result);
      setting.out(`${call.json ? JSON.stringify({ formula, ...result }) : readable(result)}\n`);
    }
    return failed ? 1 : 0;
  } catch (error) {
    if (!(error instanceof WorkbookRefused)) throw error;
    setting.err(`${error.message}\n`);
    return 1;
  }
}

async function readCall(argv: string[], setting: CommandSetting): Promise<Call | string> {
  try {
    const options = { json: { type: 'boolean' }, workbook: { type: 'string' } } as const;
    const { values, positionals } = parseArgs({ args: argv, options, allowPositionals: true });
    const given = positionals.length > 0 ? positionals : ((await setting.input()) ?? '').split(/\r?\n/);
    const formulas = given.map((line) => line.trim()).filter((line) => line !== '');
    if (formulas.length === 0) return 'Which formula? Give at least one, such as =1+1.';
    return { json: values.json ?? false, workbook: values.workbook, formulas };
  } catch (error) {
    return wrongCall(error);
  }
}

function readable(result: FormulaResult): string {
  if ('error' in result) return `${result.error.code} ${result.error.message ?? ''}`.trimEnd();
  if (!Array.isArray(result.value)) return shown(result.value);
  return result.value.map((row) => row.map(shown).join('\t')).join('\n');
}

/** Whether a formula gave an error, as its result or in a cell of it. */
function hasError(result: FormulaResult): boolean {
  if ('error' in result) return true;
  return Array.isArray(result.value) && result.value.flat().some(isError);
}

function isError(value: unknown): boolean {
  return typeof value === 'object' && value !== null && 'code' in value;
}

function shown(value: unknown): string {
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (isError(value)) return String((value as { code: unknown }).code);
  return String(value);
}
