import { sentenceInCell } from '../../../core/inputError.js';
import { inventedOf, workBasis } from '../../../core/say/workBasis.js';
import type { RowWorkResult } from '../../../core/work/workOnRow.js';
import { listWords } from '../../../core/say/listWords.js';
import { counted } from '../../shared/change/describeStep.js';

/** Time and cost of the rows that a press runs, taken together. */
export interface WorkCompared {
  /** Of the rows that have a time; undefined where none has. */
  seconds?: number;
  /** Undefined where the press has no hourly rate, or no row has a time. */
  cost?: number;
  /** What is not in it, or stands in it and is invented; each a sentence about the press. */
  missing: readonly string[];
}

/** The sums of what is known of the work on some rows, and what is missing in them. */
export function workCompared(works: readonly RowWorkResult[]): WorkCompared {
  const timed = works.flatMap((work) => (work.is === 'timed' ? work : []));
  const costs = timed.flatMap(({ money }) => money.cost ?? []);
  const missing = missingIn(works);
  if (timed.length === 0) return { missing };
  return {
    seconds: timed.reduce((sum, { time }) => sum + time.seconds, 0),
    ...(costs.length === timed.length ? { cost: costs.reduce((sum, { cost }) => sum + cost, 0) } : {}),
    missing,
  };
}

function missingIn(works: readonly RowWorkResult[]): string[] {
  const timed = works.flatMap((work) => (work.is === 'timed' ? work : []));
  const untimed = works.flatMap((work) => (work.is === 'timed' ? [] : workBasis(work)));
  const rows = (of: readonly unknown[]) => counted(of.length, 'row');
  const refused = timed.flatMap(({ money }) => (money.refused ? sentenceInCell(money.refused) : []));
  const noRate = timed.some(({ money }) => !money.cost && !money.refused);
  const noMaterial = timed.some(({ money }) => money.cost && money.cost.material === undefined);
  const drilled = timed.filter(({ elsewhere }) => elsewhere.length > 0);
  const invented = [...new Set(timed.flatMap(inventedOf))];
  return [
    ...[...new Set(untimed)].map((why) => `${rows(untimed.filter((each) => each === why))}: ${why}`),
    ...[...new Set(refused)].map((why) => `No cost: ${why}`),
    ...(noRate ? ['No cost: the press has no Hourly rate.'] : []),
    ...(noMaterial ? ['The cost has no material: the shop gives no Material price.'] : []),
    ...(drilled.length > 0 ? [`${rows(drilled)}: what is done off the press is not in it.`] : []),
    ...(invented.length > 0 ? [`Invented until the shop gives its own: ${listWords(invented)}.`] : []),
  ];
}
