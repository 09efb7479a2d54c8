import { verdictKind } from '../check/verdict.js';
import type { CheckedRow } from './rowResult.js';

/** False for a row with an open check, whatever its word, and for one of which something is not known. */
export function isFullyChecked({ verdict, findings }: CheckedRow): boolean {
  const kind = verdictKind(verdict);
  return kind !== 'open' && kind !== 'unknown' && findings.every(({ outcome }) => outcome !== 'open');
}
