import { sentenceInCell } from '../inputError.js';
import { formatNumber } from '../quantity/formatLength.js';
import type { RouteStep } from '../row/route.js';
import type { RowMoney } from '../work/rowMoney.js';
import type { RowWorkResult, TimedRow } from '../work/workOnRow.js';
import { listWords } from './listWords.js';

/** What the minutes and the cost of a row stand on, or why there are none. */
export function workBasis(work: RowWorkResult): string {
  switch (work.is) {
    case 'blank':
      return '';
    case 'not made':
      return `No time: the row is ${work.verdict}.`;
    case 'off press':
      return `No time: nothing of it is done on a press. ${notIn(work.elsewhere)}`.trim();
    case 'no length':
      return 'No time: give Length.';
    case 'refused':
      return `No time: ${sentenceInCell(work.failure)}`;
    case 'timed':
      return sentences(work).join(' ');
  }
}

function sentences(work: TimedRow): string[] {
  const { time, verdict, press, money } = work;
  const setup = formatNumber(time.setupSeconds / 60, 1);
  const run = formatNumber((time.seconds - time.setupSeconds) / 60, 1);
  const told = [`${setup} min to set up ${press}, ${run} min to run.`];
  if (work.isInventedPress) told.push(`${press} is an invented press: do not quote from it.`);
  if (verdict === 'Not checked')
    told.push('The row is Not checked: the time holds only if the press can do it.');
  if (work.sharedSetup) told.push('Tool changes are not included: they are shared over a run.');
  if (work.holdersNotKnown) told.push('Holder changes are not included: give the Holder of each punch.');
  told.push(...costWords(money));
  if (work.assumed.length > 0) {
    const taken = work.assumed.map(({ item, as }) => `${as} for ${item}`);
    told.push(`Assumed until ${press} says otherwise: ${listWords(taken)}.`);
  }
  const invented = inventedOf(work);
  if (invented.length > 0) told.push(`Invented until the shop gives its own: ${listWords(invented)}.`);
  const elsewhere = notIn(work.elsewhere);
  if (elsewhere !== '') told.push(elsewhere);
  if (money.refused) told.push(`No cost: ${sentenceInCell(money.refused)}`);
  else if (money.cost === undefined) told.push(`No cost: give the Hourly rate of ${press}.`);
  return told;
}

function costWords({ cost, pricedBy, breaksAtMinimum }: RowMoney): string[] {
  if (!cost) return [];
  const press = `Press ${formatNumber(cost.press, 2)}`;
  const told =
    cost.material === undefined
      ? [`${press}; no material, since the shop gives no Material price.`]
      : [`${press}, material ${formatNumber(cost.material, 2)}.`];
  if (pricedBy === undefined) told.push('No price: the shop gives no Markup or Margin.');
  else told.push(`The price includes the shop's ${pricedBy}.`);
  if (breaksAtMinimum.length > 0) {
    const pieces = breaksAtMinimum.map((count) => formatNumber(count, 0));
    told.push(
      `At a quantity of ${listWords(pieces, 'or')} the price each is the Minimum charge of the shop, shared out.`,
    );
  }
  return told;
}

/** Items that stand in the time and that the shop has not given, each once. */
export function inventedOf({ time }: TimedRow): string[] {
  return [...new Set(time.shares.flatMap(({ invented }) => invented))];
}

const words: Partial<Record<RouteStep, string>> = {
  saw: 'sawing',
  burn: 'burning',
  drill: 'drilling',
  ream: 'reaming',
  tap: 'tapping',
  countersink: 'countersinking',
};

function notIn(elsewhere: readonly RouteStep[]): string {
  const named = elsewhere.flatMap((step) => words[step] ?? []);
  return named.length === 0 ? '' : `Not included: ${listWords(named)}.`;
}
