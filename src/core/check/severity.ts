import type { Finding, ShareFinding } from './finding.js';
import { type Verdict, verdicts } from './verdict.js';

function shareOf(finding: Finding): number {
  return finding.rule === 'share' ? finding.use : 0;
}

/** Orders findings worst first; among equals the larger share first. */
export function bySeverity(a: Finding, b: Finding): number {
  return verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict) || shareOf(b) - shareOf(a);
}

/** The worst word of several findings; OK where there is none. */
export function worstVerdict(findings: readonly Finding[]): Verdict {
  const ranks = findings.map(({ verdict }) => verdicts.indexOf(verdict));
  return verdicts[Math.min(verdicts.length - 1, ...ranks)] ?? 'OK';
}

/** Of several lists of findings the one whose worst word is the mildest; the first of equals. */
export function mildestOf<List extends readonly Finding[]>(lists: readonly List[]): List | undefined {
  const rank = (list: List) => verdicts.indexOf(worstVerdict(list));
  return lists.reduce<List | undefined>(
    (mildest, each) => (mildest === undefined || rank(each) > rank(mildest) ? each : mildest),
    undefined,
  );
}

/** The finding with the largest share of a rating; undefined where none has one. */
export function hardestOf(findings: readonly Finding[]): ShareFinding | undefined {
  return findings
    .filter((finding): finding is ShareFinding => finding.rule === 'share')
    .reduce<
      ShareFinding | undefined
    >((most, each) => (most === undefined || each.use > most.use ? each : most), undefined);
}
