import type { Verdict } from './finding.js';

/** What a verdict says of a row: it passes, it fails, or it is not known, since something is missing or unreadable. */
export type VerdictKind = 'passes' | 'unknown' | 'fails';

/** Only a row that was checked and found wanting fails; one that could not be checked is not known. */
export function verdictKind(verdict: Verdict): VerdictKind {
  switch (verdict) {
    case 'OK':
    case 'Near limit':
      return 'passes';
    case 'Not checked':
    case 'Check input':
      return 'unknown';
    default:
      return 'fails';
  }
}
