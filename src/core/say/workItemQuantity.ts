import { formatNumber } from '../quantity/formatLength.js';
import type { WorkItem } from '../row/rowItem.js';
import type { RowWorkResult } from '../work/workOnRow.js';
import type { NamedValue } from '../working/working.js';
import { workBasis } from './workBasis.js';

/** Time or cost of a row, in the core's unit; empty text where there is nothing to show, never a zero. */
export function workItemQuantity(work: RowWorkResult, item: WorkItem): Pick<NamedValue, 'kind' | 'value'> {
  if (item === 'basis') return { kind: 'text', value: workBasis(work) };
  if (work.is !== 'timed') return { kind: 'text', value: '' };
  const money = (value: number | undefined) =>
    value === undefined ? ({ kind: 'text', value: '' } as const) : ({ kind: 'money', value } as const);
  switch (item) {
    case 'minutes':
      return { kind: 'minutes', value: work.time.seconds };
    case 'cost':
      return money(work.money.cost?.cost);
    case 'price':
      return money(work.money.cost?.price);
    case 'breaks':
      return {
        kind: 'text',
        value: work.money.breaks.map(({ pieces, each }) => `${pieces}: ${formatNumber(each, 2)}`).join('; '),
      };
  }
}
