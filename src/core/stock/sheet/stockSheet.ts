import type { ListPlan } from '../list/jobPlan.js';
import { blankLossWords, kerfWords, lossWords, partlyPricedWords } from '../list/planWords.js';
import { listWords } from '../../say/listWords.js';
import { stockRowSentences } from '../../say/stockRows.js';
import { buyRows, dropRows, leftRows, markRows, resultRows, shortRows } from './blocks.js';
import { cutRows } from './cutRows.js';
import type { SheetContent, SheetRow } from './sheetCell.js';

/** The first cell of a sheet that was made here: no other is replaced. */
export const stockSheetTitle = 'Stock plan by Tonrow';

const stockSheetName = 'Stock plan';

/**
 * The plan of a list as a sheet: what was taken, then what to buy, how good it is, what each mark costs, the cuts in
 * shop order, drops, shortages and rows that are not planned. The first cell of each row says what it is: `buy`, `result`,
 * `mark`, `cut`, `drop`, `short`, `not planned`.
 * @param plan the plan of a list
 * @returns cells with their kinds; numbers in the unit of the shop, lb or kg
 * Valid for every plan. Throws nothing.
 * @example stockSheet(await planJobs(jobs, shop, planStock)).rows
 * Source: common practice, no source.
 */
export function stockSheet(plan: ListPlan): SheetContent {
  const blocks = [
    buyRows(plan),
    resultRows(plan),
    markRows(plan),
    cutRows(plan),
    dropRows(plan),
    shortRows(plan),
    leftRows(plan),
  ];
  const rows: SheetRow[] = [[{ kind: 'title', value: stockSheetTitle }], ...notes(plan).map(line)];
  for (const block of blocks) {
    if (block.length > 0) rows.push([]);
    for (const row of block) rows.push(row);
  }
  return {
    name: stockSheetName,
    rows,
    widths: [12, 16, 12, 12, 9, 14, 12, 14, 12, 12, 10, 11, 12, 14, 22, 40],
  };
}

const line = (value: string): SheetRow => [{ kind: 'text', value }];

/** What the plan was made with, in sentences. */
function notes(plan: ListPlan): string[] {
  const { planned, unit, onePiece, unreadable, stamp } = plan;
  const priced = planned.some((job) => job.priced === 'Material price')
    ? ['Where the Stock table gives no price, Material price of the settings is taken.']
    : [];
  const failing = new Set(
    planned.flatMap(({ job }) =>
      job.parts.filter(({ verdict }) => isTold(verdict)).map(({ mark, verdict }) => `${mark} ${verdict}`),
    ),
  );
  return [
    `Shop: ${stamp}`,
    'Miters share a cut where they lean alike. Cut at: from the front end of the bar to the far side of the cut. Back gauge: pushed to the stop.',
    ...kerfNotes(plan),
    ...lossWords(plan, unit),
    ...blankLossWords(plan),
    ...priced,
    ...planned.flatMap(({ job }) => {
      const words = partlyPricedWords(job);
      return words === undefined ? [] : [`${job.section.designation}: ${words}`];
    }),
    ...(onePiece.length > 0 ? [`Qty is blank, so one piece is planned: ${listWords(onePiece)}.`] : []),
    ...stockRowSentences(plan),
    ...(failing.size > 0
      ? [`Planned although the press does not pass them: ${[...failing].join(', ')}.`]
      : []),
    ...(planned.some(({ job }) => job.origin === 'common lengths')
      ? [
          `Common lengths are invented (${unit === 'in' ? '20 and 40 ft' : '6000 and 12000 mm'}): ask your supplier.`,
        ]
      : []),
    ...unreadable,
  ];
}

const passing: readonly string[] = ['OK', 'Near limit', 'OK so far', 'Off press'];

function isTold(verdict: string): boolean {
  return !passing.includes(verdict);
}

/** One sentence for sections whose kerf is said alike. */
function kerfNotes({ planned, unit }: ListPlan): string[] {
  const bySentence = new Map<string, string[]>();
  for (const { job } of planned) {
    const sentence = kerfWords(job, unit);
    bySentence.set(sentence, [...(bySentence.get(sentence) ?? []), job.section.designation]);
  }
  return [...bySentence].map(([sentence, sections]) => `${[...new Set(sections)].join(', ')}: ${sentence}`);
}
