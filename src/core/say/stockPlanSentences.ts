import type { LengthUnit } from '../quantity/units.js';
import type { PlannedJob } from '../stock/list/jobPlan.js';
import type { StockJob } from '../stock/list/stockJob.js';
import { isPriced } from '../stock/list/problemOf.js';
import type { StockPlan } from '../stock/stockPlan.js';
import { barLength } from './barLength.js';
import { gapPercent, shortageWords, stockGap } from './stockWords.js';

/*
 * What is said of the plan of a job: while it is made, and how good it is. Money has the currency of the shop.
 */

/** What of a job its amounts are told in. */
type PlannedOf = Pick<StockJob, 'stocks'>;

/** The bars of a plan, all alike or not. */
function barCount({ bars }: StockPlan): number {
  return bars.reduce((sum, bar) => sum + bar.bars, 0);
}

export function barsWords(bars: number): string {
  return bars === 1 ? '1 bar' : `${bars.toLocaleString('en')} bars`;
}

export function moneyWords(amount: number, currency: string): string {
  const text = amount.toLocaleString('en', { minimumFractionDigits: 2, maximumFractionDigits: 2 });
  return `${text} ${currency}`.trim();
}

/** Of a bound that misses a whole number of bars by rounding only. */
const roundingShare = 1e-9;

/** What a plan buys and what no plan buys less than, in bars where that says all, else in money or length. */
function amounts(plan: StockPlan, job: PlannedOf, currency: string, unit: LengthUnit) {
  const byPrice = isPriced(job);
  const [only, ...others] = job.stocks;
  if (only && others.length === 0) {
    const each = (byPrice ? only.price : undefined) ?? only.lengthMm;
    const least = Math.ceil((plan.bound / each) * (1 - roundingShare));
    return {
      buys: barsWords(barCount(plan)),
      least: `no plan needs fewer than ${least.toLocaleString('en')}`,
    };
  }
  const amount = (value: number) => (byPrice ? moneyWords(value, currency) : barLength(value, unit));
  const buys = `${barsWords(barCount(plan))}, ${amount(plan.purchase)}`;
  return { buys, least: `no plan ${byPrice ? 'costs' : 'buys'} less than ${amount(plan.bound)}` };
}

/** How far a plan is that is still made: `31 bars so far; no plan needs fewer than 30`. */
export function soFarWords(plan: StockPlan, job: PlannedOf, currency: string, unit: LengthUnit): string {
  const { buys, least } = amounts(plan, job, currency, unit);
  return `${buys} so far; ${least}`;
}

/** How it is known how good a plan is, in whole sentences. */
export function proofSentences(
  plan: StockPlan,
  job: PlannedOf,
  currency: string,
  unit: LengthUnit,
): string[] {
  const proven = `Proven: no plan ${isPriced(job) ? 'costs' : 'buys'} less.`;
  if (plan.proof === 'by bound') return [proven];
  if (plan.proof === 'by patterns')
    return [`${proven} Every way to cut a bar that could do better was tried.`];
  return [
    gapSentence(plan, job, currency, unit),
    ...(plan.isStopped ? ['It was stopped: this is the best plan so far.'] : []),
    ...(plan.by === 'steps only'
      ? ['The solver did not load, so it is made by steps alone: plan again to try with the solver.']
      : []),
  ];
}

function gapSentence(plan: StockPlan, job: PlannedOf, currency: string, unit: LengthUnit): string {
  const { least } = amounts(plan, job, currency, unit);
  if (plan.bound <= 0) return 'Not proven: how near the least it is, is not known.';
  return `Not proven: ${least}; this is at most ${gapPercent(stockGap(plan))} above it.`;
}

/** Pieces that find no bar, in a sentence with their mark. */
export function shortageSentence(shortage: PlannedJob['shortages'][number], unit: LengthUnit): string {
  const { mark, longMm } = shortage.part;
  const name = mark === '' ? 'without a mark' : mark;
  return `${shortageWords(shortage, `${name} (${barLength(longMm, unit)})`)}.`;
}
