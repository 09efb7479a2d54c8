import { turnedIntoDate } from '../../../core/quantity/dateTrap.js';
import { type Verdict, verdictKind, verdicts } from '../../../core/check/verdict.js';
import type { RowResult } from '../../../core/row/rowResult.js';

/** Rows that fail for the same reason. */
export interface FailGroup {
  key: string;
  verdict: Verdict;
  reason: string;
  /** Rows of the list, from 0 below the headings. */
  rows: number[];
}

/** More reasons than these that differ only in their numbers are told as one. */
const mostAlike = 6;

/** The rows that fail or of which something is not known, by their worst finding, the largest group first. */
export function failGroups(results: readonly RowResult[]): FailGroup[] {
  const groups = new Map<string, FailGroup>();
  results.forEach((result, row) => {
    if (result.blank || isNoReason(result.verdict)) return;
    const worst = result.findings.find(({ verdict }) => verdict === result.verdict);
    const reason = worst?.note.includes(turnedIntoDate)
      ? `a size ${turnedIntoDate}`
      : (worst?.note ?? result.governs);
    const key = `${result.verdict} ${reason}`;
    const group = groups.get(key) ?? { key, verdict: result.verdict, reason, rows: [] };
    group.rows.push(row);
    groups.set(key, group);
  });
  return joinAlike([...groups.values()]).sort(
    (a, b) => b.rows.length - a.rows.length || verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict),
  );
}

function isNoReason(verdict: Verdict): boolean {
  const kind = verdictKind(verdict);
  return kind === 'passes' || kind === 'elsewhere';
}

/** Reasons that differ in their numbers only, and are many, become one group that says so. */
function joinAlike(groups: readonly FailGroup[]): FailGroup[] {
  const byPattern = new Map<string, FailGroup[]>();
  for (const group of groups) {
    const pattern = patternOf(group);
    byPattern.set(pattern, [...(byPattern.get(pattern) ?? []), group]);
  }
  return [...byPattern].flatMap(([pattern, alike]) => {
    const [first] = alike;
    if (!first || alike.length <= mostAlike) return alike;
    const rows = alike.flatMap((group) => group.rows).sort((a, b) => a - b);
    return [
      {
        ...first,
        key: pattern,
        rows,
        reason: `${first.reason} And ${alike.length - 1} reasons of the same kind.`,
      },
    ];
  });
}

function patternOf({ verdict, reason }: FailGroup): string {
  return `${verdict} ${reason.replaceAll(/'[^']*'/g, "''").replaceAll(/\d[\d\-/.,]*/g, '#')}`;
}

/** The rows in runs of neighbours: each can be selected as one area. */
export function runsOf(rows: readonly number[]): { row: number; count: number }[] {
  const runs: { row: number; count: number }[] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last && last.row + last.count === row) last.count += 1;
    else runs.push({ row, count: 1 });
  }
  return runs;
}
