import { whyShort } from '../../say/stockWords.js';
import type { JobPart, LeftRow } from '../list/stockJob.js';
import type { ListPlan, PlannedJob } from '../list/jobPlan.js';
import {
  boughtName,
  isKerfOpen,
  kerfWords,
  leftOutWords,
  statusWords,
  totalStatusWords,
  unplannedWords,
} from '../list/planWords.js';
import { count, headings, length, mass, money, share, text } from './cells.js';
import type { SheetCell, SheetRow } from './sheetCell.js';

/*
 * The lists of a plan, one below the other. The first column says what a row is, the next two its section and grade, so
 * that formulas and filters find each row.
 */

export const named = (line: string, { job }: Pick<PlannedJob, 'job'>): SheetCell[] => [
  text(line),
  text(boughtName(job)),
  text(job.grade.name),
];

export const markOf = ({ mark, row }: { mark: string; row: number }) => (mark === '' ? `row ${row}` : mark);

export function buyRows({ planned, unit, currency }: ListPlan): SheetRow[] {
  const inMoney = currency === '' ? '' : `, ${currency}`;
  const rows = planned.flatMap((job) =>
    job.purchases.map(
      ({ stock, bars, massKg, cost }): SheetRow => [
        ...named('buy', job),
        length(stock.lengthMm, unit),
        count(bars),
        mass(massKg, unit),
        money(cost === undefined ? undefined : cost / bars),
        money(cost),
        text(job.job.origin === 'common lengths' ? 'The length is invented.' : ''),
      ],
    ),
  );
  const costs = planned.map(({ cost }) => cost);
  const isPriced = costs.every((cost) => cost !== undefined);
  const total: SheetRow = [
    text('buy, total'),
    null,
    null,
    null,
    count(sum(planned.flatMap(({ purchases }) => purchases.map(({ bars }) => bars)))),
    mass(sum(planned.map((each) => each.mass.boughtKg)), unit),
    null,
    money(isPriced ? sum(costs.map((cost) => cost ?? 0)) : undefined),
    text(
      totalStatusWords({ planned }) +
        (isPriced ? '' : ' Some bars have no price, so there is no total cost.'),
    ),
  ];
  const head = headings('Line', 'Section', 'Grade', `Bar, ${unit}`, 'Bars', massHead('Bought', unit));
  return [[...head, ...headings(`Each${inMoney}`, `Cost${inMoney}`, 'Note')], ...rows, total];
}

const massHead = (what: string, unit: 'in' | 'mm') => `${what}, ${unit === 'in' ? 'lb' : 'kg'}`;

export function resultRows({ planned, unit }: ListPlan): SheetRow[] {
  const rows = planned.map((each): SheetRow => {
    const { netKg, boughtKg, dropsKg, scrapKg } = each.mass;
    return [
      ...named('result', each),
      mass(netKg, unit),
      mass(boughtKg, unit),
      mass(dropsKg, unit),
      mass(scrapKg, unit),
      boughtKg > 0 ? share(netKg / boughtKg) : null,
      text(
        isKerfOpen(each.job)
          ? `${statusWords(each.plan)} ${kerfWords(each.job, unit)}`
          : statusWords(each.plan),
      ),
    ];
  });
  const head = headings('Line', 'Section', 'Grade', massHead('Parts', unit), massHead('Bought', unit));
  return [
    [...head, ...headings(massHead('Drops kept', unit), massHead('Scrap', unit), 'Yield', 'Note')],
    ...rows,
  ];
}

export function dropRows({ planned, unit }: ListPlan): SheetRow[] {
  const rows = planned.flatMap((job) =>
    job.bars
      .filter(({ isKept }) => isKept)
      .map(
        ({ restMm, bars, pattern }): SheetRow => [
          ...named('drop', job),
          length(restMm, unit),
          count(bars),
          count(pattern),
          mass(restMm * bars * job.job.kgPerMm, unit),
        ],
      ),
  );
  if (rows.length === 0) return [];
  return [
    headings('Line', 'Section', 'Grade', `Length, ${unit}`, 'Drops', 'Pattern', massHead('Mass', unit)),
    ...rows,
  ];
}

export function markRows({ planned, unit, currency }: ListPlan): SheetRow[] {
  const inMoney = currency === '' ? '' : `, ${currency}`;
  const rows = planned.flatMap((job) =>
    job.shares.map(
      ({ part, pieces, share: of, boughtKg, cost }): SheetRow => [
        ...named('mark', job),
        text(markOf(part)),
        count(pieces),
        length(part.longMm, unit),
        share(of),
        mass(boughtKg, unit),
        money(cost),
      ],
    ),
  );
  const head = headings(
    'Line',
    'Section',
    'Grade',
    'Mark',
    'Pieces',
    `Length, ${unit}`,
    'Share of its section',
  );
  return [[...head, ...headings(massHead('Bought', unit), `Material${inMoney}`)], ...rows];
}

export function shortRows({ planned, unit }: ListPlan): SheetRow[] {
  const rows = planned.flatMap((job) =>
    job.shortages.map(
      (shortage): SheetRow => [
        ...named('short', job),
        text(markOf(shortage.part)),
        count(shortage.pieces),
        length(shortage.part.longMm, unit),
        text(whyShort(shortage)),
      ],
    ),
  );
  if (rows.length === 0) return [];
  return [headings('Line', 'Section', 'Grade', 'Mark', 'Pieces', `Length, ${unit}`, 'Note'), ...rows];
}

export function leftRows({ left, unplanned, unit }: ListPlan): SheetRow[] {
  const noPlan = unplanned.map(
    (each): SheetRow => [
      ...named('not planned', each),
      text(marksOf(each.job.parts)),
      null,
      text(unplannedWords(each, unit)),
    ],
  );
  const byReason = new Map<string, LeftRow[]>();
  for (const each of left) {
    const why = leftOutWords(each.why);
    byReason.set(why, [...(byReason.get(why) ?? []), each]);
  }
  const rows = [...byReason].map(
    ([why, of]): SheetRow => [
      text('not planned'),
      null,
      null,
      text(marksOf(of)),
      count(of.length),
      text(why),
    ],
  );
  if (noPlan.length + rows.length === 0) return [];
  return [headings('Line', 'Section', 'Grade', 'Marks', 'Rows', 'Why'), ...noPlan, ...rows];
}

const mostMarks = 40;

function marksOf(parts: readonly Pick<JobPart, 'mark' | 'row'>[]): string {
  const marks = [...new Set(parts.map(markOf))];
  const rest = marks.length > mostMarks ? ` and ${marks.length - mostMarks} more` : '';
  return marks.slice(0, mostMarks).join(', ') + rest;
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
