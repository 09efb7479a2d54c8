import path from 'node:path';
import { parseArgs } from 'node:util';
import { type BookCards, cardsOfBook } from '../../print/card/cardsOfBook.js';
import { openWorkbook } from '../../xlsx/workbook.js';
import { WorkbookRefused } from '../../xlsx/refusal/refusal.js';
import { bookOfFile } from '../book/bookOfFile.js';
import { nodeCodec } from '../files/nodeCodec.js';
import { readWorkbookFile } from '../files/readFile.js';
import { builtFunctions } from '../functions/builtFunctions.js';
import { calculateWorkbook } from '../recalculate/calculate.js';
import { type CommandSetting, standard, wrongCall } from './output.js';
import { checkTarget, listed, writeTarget } from './target.js';

const usage = 'Usage: npm run --silent cards -- IN.xlsx OUT.html [--press NAME] [--marks A,B]\n';

interface Call {
  source: string;
  target: string;
  press: string | undefined;
  marks: string[] | undefined;
}

/**
 * Writes the cards of a workbook's rows as a page to print. 0: done, 1: unreadable or refused, 2: wrong call, 3: done,
 * some of the cards asked for have reasons instead of steps, or are made of cells that may be stale.
 */
export async function cards(
  argv: string[],
  setting: CommandSetting = standard,
  today: Date = new Date(),
): Promise<number> {
  const call = readCall(argv);
  if (typeof call === 'string') {
    setting.err(`${call}\n${usage}`);
    return 2;
  }
  try {
    const bytes = await readWorkbookFile(call.source);
    await checkTarget(call.source, call.target);
    const functions = await builtFunctions(setting.folder);
    const calculated = await calculateWorkbook(openWorkbook(bytes, nodeCodec), functions, []);
    const job = { name: path.basename(call.source), date: dateText(today) };
    const made = cardsOfBook(bookOfFile(calculated), call, job);
    if ('problem' in made) throw new WorkbookRefused(made.problem);
    await writeTarget(call.source, call.target, new TextEncoder().encode(made.page));
    const stale = calculated.stale.size;
    setting.out(summary(call.target, made, stale));
    return made.withoutSteps.length > 0 || stale > 0 ? 3 : 0;
  } catch (error) {
    if (!(error instanceof WorkbookRefused)) throw error;
    setting.err(`${error.message}\n`);
    return 1;
  }
}

function readCall(argv: string[]): Call | string {
  try {
    const { values, positionals } = parseArgs({
      args: argv,
      options: { press: { type: 'string' }, marks: { type: 'string' } },
      allowPositionals: true,
    });
    const [source, target] = positionals;
    if (source === undefined || target === undefined || positionals.length > 2)
      return 'Name one workbook, and the page to write.';
    const marks = values.marks
      ?.split(',')
      .map((mark) => mark.trim())
      .filter((mark) => mark !== '');
    if (marks?.length === 0) return 'Which marks? Name at least one, such as --marks A,B.';
    return { source, target, press: values.press, marks };
  } catch (error) {
    return wrongCall(error);
  }
}

function dateText(date: Date): string {
  return date.toLocaleDateString('en', { year: 'numeric', month: 'long', day: 'numeric' });
}

function summary(target: string, made: Exclude<BookCards, { problem: string }>, stale: number): string {
  const same = (text: string) => text;
  const lines = [
    `${made.cards} ${made.cards === 1 ? 'card' : 'cards'}.`,
    ...listed('with reasons instead of steps', made.withoutSteps, same),
    ...listed('without a card, since they cannot be made as they stand', made.leftOut, same),
    ...made.told,
    ...(stale > 0 ? [`${stale} cells may be stale: let the spreadsheet program calculate them.`] : []),
    `Written to ${target}.`,
  ];
  return `${lines.join('\n')}\n`;
}
