import type { Finding } from '../../../core/check/finding.js';
import type { RowResult } from '../../../core/row/rowResult.js';

/** What cannot be read of a part, whichever press it is checked against: the same in every result. */
export function unreadInputs(results: readonly RowResult[]): Finding[] {
  const [first = [], ...others] = results.map((result) =>
    result.blank
      ? []
      : result.findings.filter(({ verdict, ofPressCell }) => verdict === 'Check input' && !ofPressCell),
  );
  return first.filter((finding) => others.every((findings) => isAmong(findings, finding)));
}

/** Whether one of some findings is the same in all that it says. */
export function isAmong(findings: readonly Finding[], finding: Finding): boolean {
  const own = JSON.stringify(finding);
  return findings.some((each) => JSON.stringify(each) === own);
}
