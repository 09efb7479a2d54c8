import { atMost } from '../atMost.js';
import { limitOf } from '../press/limit.js';
import { barLengthMm } from '../shop/barLengths.js';
import { setting } from '../shop/setting.js';
import { barsOf } from './barsOf.js';
import type { OperatorStep, StepNote } from './operatorStep.js';
import type { StepContext } from './stepContext.js';

/** Bars or pieces to be pulled, and what is to be minded of them at the press. */
export function pullStock(context: StepContext, isCut: boolean): OperatorStep {
  const { row, press, shop } = context;
  const { section, grade, qty } = row;
  const stock = { designation: section.designation, grade: grade.name };
  const bars = isCut ? barsOf(row, qty, press, shop) : undefined;
  if (!bars) return { action: 'pull stock', notes: [{ is: 'pieces', count: qty, ...stock }] };
  const { count, lengthMm } = bars;
  return {
    action: 'pull stock',
    notes: [
      { is: 'bars', count, lengthMm, ...stock },
      ...ownBar(lengthMm, context),
      ...tooBig(lengthMm, context),
    ],
  };
}

function ownBar(lengthMm: number, { row: { section }, shop }: StepContext): StepNote[] {
  const barMm = barLengthMm(setting(shop, 'barLengths'), section.designation, shop.unit);
  return atMost(lengthMm, barMm) ? [] : [{ is: 'longer than the bars', barMm }];
}

/** A row is held on its pieces; the bar they come from may be more than the supports carry. */
function tooBig(lengthMm: number, { row, press }: StepContext): StepNote[] {
  const [limitMm, limitKg] = [limitOf(press, 'longestBar'), limitOf(press, 'heaviestBar')];
  const kg = ((row.massKg ?? 0) / (row.lengthMm ?? lengthMm)) * lengthMm;
  const notes: StepNote[] = [];
  if (typeof limitMm === 'number' && !atMost(lengthMm, limitMm))
    notes.push({ is: 'over the supports', item: 'longest bar', limitMm });
  if (typeof limitKg === 'number' && !atMost(kg, limitKg))
    notes.push({ is: 'over the supports', item: 'heaviest bar', limitKg });
  return notes;
}
