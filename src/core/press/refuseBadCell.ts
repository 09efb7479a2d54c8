import type { Finding } from '../check/finding.js';
import { InputError, sentenceInCell } from '../inputError.js';

/** Refuses where the press has a cell that cannot be read: a function of one press has nothing else to show. */
export function refuseBadCell(finding: Finding | undefined): void {
  if (finding?.rule !== 'refusal') return;
  const problem = sentenceInCell(finding.failure);
  throw new InputError({ code: 'invalid', argument: 'Press', received: '', problem, allowed: '' });
}
