import type { LengthUnit } from '../../core/quantity/units.js';
import { formatMass } from '../../core/quantity/formatMass.js';
import { barLength } from '../../core/say/barLength.js';
import { caution } from '../../core/say/cautionWords.js';
import { leftOutSentences } from '../../core/say/leftOutSentences.js';
import { moneyWords, proofSentences, shortageSentence } from '../../core/say/stockPlanSentences.js';
import { stockRowSentences } from '../../core/say/stockRows.js';
import {
  blankLossWords,
  boughtName,
  kerfWords,
  partlyPricedWords,
  unplannedWords,
} from '../../core/stock/list/planWords.js';
import type { JobMass, ListPlan, PlannedJob } from '../../core/stock/list/jobPlan.js';
import { html, type Html, styleElement } from '../html.js';
import { barFigure } from './barFigure.js';
import { planStyle } from './planStyle.js';
import { factTable } from './factTable.js';

/** What the caller knows of a plan. */
export interface PlanJob {
  /** The name of the file. */
  name: string;
  date: string;
}

/** All strips of a plan have one scale: the longest bar fills the width. */
function longestBarMm({ planned }: Pick<ListPlan, 'planned'>): number {
  return planned
    .flatMap(({ bars }) => bars)
    .reduce((longest, { stock }) => Math.max(longest, stock.lengthMm), 1);
}

/**
 * A stock plan as a page: what to buy, then each section with its bars, a bar and its list together. Without its style
 * where the page it is shown in allows no style as text.
 */
export function planPage(plan: ListPlan, job: PlanJob, style = planStyle): string {
  const longestMm = longestBarMm(plan);
  const page = html`<!doctype html>
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <meta name="viewport" content="width=device-width" />
        <title>Stock plan of ${job.name}</title>
        ${styleElement(style)}
      </head>
      <body>
        <main>
          <h1>Stock plan</h1>
          <p>${job.name} · ${job.date} · ${plan.stamp}</p>
          ${purchases(plan)} ${rowNotes(plan)}
          ${plan.planned.map((each) => jobSection(each, plan, longestMm))}
          <p class="foot">
            The strips have one scale along the bar: the longest, ${barLength(longestMm, plan.unit)}, fills
            the width. Running lengths are from the front end of the bar, its trim included. ${caution}
          </p>
        </main>
      </body>
    </html>`;
  return page.text;
}

function purchases(plan: ListPlan): Html {
  const { planned, unit, currency } = plan;
  const isPriced = planned.some(({ cost }) => cost !== undefined);
  const rows = planned.flatMap(({ job, purchases: own }) =>
    own.map(({ stock, bars, massKg, cost }) => [
      String(bars),
      barLength(stock.lengthMm, unit),
      boughtName(job),
      job.grade.name,
      formatMass(massKg, unit),
      ...(isPriced ? [cost === undefined ? 'no price' : moneyWords(cost, currency)] : []),
    ]),
  );
  const headings = ['Bars', 'Length', 'Section', 'Grade', 'Mass', ...(isPriced ? ['Cost'] : [])];
  return html`<section>
    <h2>To buy</h2>
    ${factTable({ headings, rows })} ${blankLossWords(plan).map((words) => html`<p>${words}</p>`)}
  </section>`;
}

/** What is not in the plan, and which hidden rows are. */
function rowNotes(plan: ListPlan): Html[] {
  const { unplanned, left, unit } = plan;
  const told = [
    ...unplanned.map((each) => `Not planned: ${nameOf(each)}. ${unplannedWords(each, unit)}`),
    ...leftOutSentences(left),
    ...stockRowSentences(plan),
  ];
  if (told.length === 0) return [];
  return [
    html`<section>
      <h2>Notes on rows</h2>
      ${told.map((words) => html`<p>${words}</p>`)}
    </section>`,
  ];
}

const nameOf = ({ job }: Pick<PlannedJob, 'job'>) => `${boughtName(job)}, ${job.grade.name}`;

function jobSection(planned: PlannedJob, plan: ListPlan, longestMm: number): Html {
  const { job, bars, shortages, mass } = planned;
  const { unit, currency, losses } = plan;
  const says = [
    ...proofSentences(planned.plan, job, currency, unit),
    partlyPricedWords(job) ?? '',
    kerfWords(job, unit),
    ...(job.origin === 'common lengths' ? ['The lengths of the bars are invented: ask your supplier.'] : []),
    massSentence(mass, unit),
  ];
  return html`<section>
    <h2>${nameOf(planned)}</h2>
    ${shortages.map((each) => html`<p class="near">${shortageSentence(each, unit)}</p>`)}
    <p>${says.filter(Boolean).join(' ')}</p>
    ${bars.map((bar) => barFigure(bar, { job, losses, unit, longestMm }))}
  </section>`;
}

function massSentence({ netKg, dropsKg, scrapKg }: JobMass, unit: LengthUnit): string {
  const kept = dropsKg > 0 ? [`drops to keep ${formatMass(dropsKg, unit)}`] : [];
  return `${[`Parts ${formatMass(netKg, unit)}`, ...kept, `scrap ${formatMass(scrapKg, unit)}`].join(', ')}.`;
}
