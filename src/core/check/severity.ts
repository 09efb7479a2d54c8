import type { Finding, ShareFinding } from './finding.js';
import { type Verdict, verdicts } from './verdict.js';

const rank = Object.fromEntries(verdicts.map((verdict, at) => [verdict, at])) as Record<Verdict, number>;

function shareOf(finding: Finding): number {
  return finding.rule === 'share' ? finding.use : 0;
}

/** Orders findings worst first; among equals the larger share first. */
export function bySeverity(a: Finding, b: Finding): number {
  return rank[a.verdict] - rank[b.verdict] || shareOf(b) - shareOf(a);
}

/** Findings worst first. Most are held: those without a share are already in their places behind all others. */
export function worstFirst(findings: readonly Finding[]): Finding[] {
  const told: Finding[] = [];
  const held: Finding[] = [];
  for (const finding of findings) {
    (finding.verdict === 'OK' && shareOf(finding) === 0 ? held : told).push(finding);
  }
  return [...told.sort(bySeverity), ...held];
}

/** The worst word of several findings; OK where there is none. */
export function worstVerdict(findings: readonly Finding[]): Verdict {
  let worst: Verdict = 'OK';
  for (const { verdict } of findings) if (rank[verdict] < rank[worst]) worst = verdict;
  return worst;
}

/** Of several lists of findings the one whose worst word is the mildest; the first of equals. */
export function mildestOf<List extends readonly Finding[]>(lists: readonly List[]): List | undefined {
  const rankOf = (list: List) => rank[worstVerdict(list)];
  return lists.reduce<List | undefined>(
    (mildest, each) => (mildest === undefined || rankOf(each) > rankOf(mildest) ? each : mildest),
    undefined,
  );
}

/** The finding with the largest share of a rating; undefined where none has one. */
export function hardestOf(findings: readonly Finding[]): ShareFinding | undefined {
  let most: ShareFinding | undefined;
  for (const each of findings) {
    if (each.rule === 'share' && (most === undefined || each.use > most.use)) most = each;
  }
  return most;
}
