import type { ReadyRow } from '../row/job/readyRow.js';
import type { StepNote } from './operatorStep.js';

/** How many pieces are made; of mirrored ones how many of each, since the steps are for one hand. */
export function piecesNote({ qty, hands }: Pick<ReadyRow, 'qty' | 'hands'>): StepNote {
  return hands && hands.right > 0 && hands.left > 0
    ? { is: 'both hands', ...hands }
    : { is: 'pieces in all', count: qty };
}
