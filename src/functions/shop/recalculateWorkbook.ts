import type { Recalculation } from '../../core/shop/startUpState.js';
import { type Attempt, isEditing, retried } from './retry.js';

const limitMs = 600_000;

/**
 * Asks the host to calculate every formula, clean or not: that gives the cell of the shop and the rows that ended
 * without it their values, and writes no cell, so it works on protected sheets and disturbs no co-author. Where
 * calculation is manual the user has the say. Never rejects.
 */
export async function recalculateWorkbook(): Promise<Recalculation> {
  let outcome: Recalculation = 'refused';
  await retried(async (): Promise<Attempt> => {
    try {
      outcome = await Excel.run({ delayForCellEdit: true }, askOnce);
      return 'done';
    } catch (error) {
      return isEditing(error) ? 'again' : 'done';
    }
  }, limitMs);
  return outcome;
}

async function askOnce(context: Excel.RequestContext): Promise<Recalculation> {
  const { application } = context.workbook;
  application.load('calculationMode');
  await context.sync();
  if (application.calculationMode === 'Manual') return 'manual';
  application.calculate('Full');
  await context.sync();
  return 'asked';
}
