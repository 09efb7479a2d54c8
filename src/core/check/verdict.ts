/** The words a row can show, worst first: one word per row, in this precedence. */
export const verdicts = [
  'Check input',
  'No part',
  'No press',
  'No station',
  'Too big',
  "Can't reach",
  'Hole too small',
  'Over capacity',
  'Holes too close',
  'Edge short',
  'No tool',
  'Not checked',
  'OK so far',
  'Near limit',
  'Off press',
  'OK',
] as const;

export type Verdict = (typeof verdicts)[number];

/**
 * What a verdict says of a row: it passes; all but distances of the drawing is held and these are open; nothing in it is
 * for a press; it is not known, since something is missing or unreadable; it fails.
 */
export type VerdictKind = 'passes' | 'open' | 'elsewhere' | 'unknown' | 'fails';

/** Only a row that was checked and found wanting fails; one that could not be checked is not known. */
export function verdictKind(verdict: Verdict): VerdictKind {
  switch (verdict) {
    case 'OK':
    case 'Near limit':
      return 'passes';
    case 'OK so far':
      return 'open';
    case 'Off press':
      return 'elsewhere';
    case 'Not checked':
    case 'Check input':
    case 'No part':
      return 'unknown';
    default:
      return 'fails';
  }
}
