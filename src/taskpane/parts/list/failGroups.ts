import type { Finding } from '../../../core/check/finding.js';
import { reasonKey } from '../../../core/check/reasonKey.js';
import { type Verdict, verdictKind, verdicts } from '../../../core/check/verdict.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { type RowResult, wordOf, worstFindingOf } from '../../../core/row/rowResult.js';
import { governs, say } from '../../../core/say/say.js';
import { asSentences } from '../../../core/say/sentencesOf.js';

/** Rows that fail for the same reason. */
export interface FailGroup {
  key: string;
  verdict: Verdict;
  reason: string;
  /** The finding that decides the row, by its number. */
  worstOf: ReadonlyMap<number, Finding>;
  /** Rows of the list, from 0 below the headings. */
  rows: number[];
}

/** More cells than these that cannot be read under one heading are told as one. */
const mostAlike = 6;

/** Why a row fails or is not known. */
interface Reason {
  unit: LengthUnit;
  worst: Finding;
  key: string;
  sentence: string;
}

interface Failing extends Reason {
  row: number;
}

const reasons = new WeakMap<RowResult, Reason>();

/** Why a row fails, found once for each result; undefined where it has nothing to tell. */
export function reasonOf(result: RowResult, unit: LengthUnit): Reason | undefined {
  const known = reasons.get(result);
  if (known?.unit === unit) return known;
  const word = wordOf(result);
  const worst = worstFindingOf(result);
  if (word === undefined || isNoReason(word) || !worst) return undefined;
  const [sentence = ''] = asSentences([say(worst, unit) || governs(worst, unit)]);
  const reason = { unit, worst, key: reasonKey(worst), sentence };
  reasons.set(result, reason);
  return reason;
}

/** The rows that fail or of which something is not known, by their worst finding, the largest group first. */
export function failGroups(results: readonly RowResult[], unit: LengthUnit): FailGroup[] {
  const failing = results.flatMap((result, row): Failing[] => {
    const reason = reasonOf(result, unit);
    return reason ? [{ row, ...reason }] : [];
  });
  return joinAlike([...groupedBy(failing, ({ key }) => key).values()])
    .map(groupOf)
    .sort(
      (a, b) => b.rows.length - a.rows.length || verdicts.indexOf(a.verdict) - verdicts.indexOf(b.verdict),
    );
}

function isNoReason(verdict: Verdict): boolean {
  const kind = verdictKind(verdict);
  return kind === 'passes' || kind === 'elsewhere';
}

/** Cells of one heading that cannot be read, and are many, become one group. */
function joinAlike(groups: readonly Failing[][]): Failing[][] {
  const alike = groupedBy(groups, ([first]) => (first ? cellKey(first) : ''));
  return [...alike.values()].flatMap((own) =>
    own.length > mostAlike ? [own.flat().sort((a, b) => a.row - b.row)] : own,
  );
}

function cellKey({ worst: finding, key }: Failing): string {
  if (finding.rule !== 'refusal' || finding.failure.cause) return key;
  return JSON.stringify([finding.rule, finding.failure.argument, finding.press]);
}

/** The first of several sentences that differ in their sizes stands for all. */
function groupOf(failing: readonly Failing[]): FailGroup {
  const [first] = failing as [Failing];
  const { worst, key } = first;
  return {
    key,
    verdict: worst.verdict,
    reason: isDate(worst) ? 'A size turned into a date.' : sentenceOf(failing),
    rows: failing.map(({ row }) => row),
    worstOf: new Map(failing.map(({ row, worst: own }) => [row, own])),
  };
}

function sentenceOf(failing: readonly Failing[]): string {
  const told = failing.map(({ sentence }) => sentence).filter((sentence) => sentence !== '');
  const [first = '', ...others] = new Set(told);
  if (others.length === 0) return first;
  return `${first} And ${others.length} ${others.length === 1 ? 'reason' : 'reasons'} of the same kind.`;
}

function isDate(finding: Finding): boolean {
  return finding.rule === 'refusal' && finding.failure.cause === 'turned into a date';
}

function groupedBy<Item>(items: readonly Item[], keyOf: (item: Item) => string): Map<string, Item[]> {
  const groups = new Map<string, Item[]>();
  for (const item of items) {
    const key = keyOf(item);
    const own = groups.get(key);
    if (own) own.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

/** The rows in runs of neighbors: each can be selected as one area. */
export function runsOf(rows: readonly number[]): { row: number; count: number }[] {
  const runs: { row: number; count: number }[] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last && last.row + last.count === row) last.count += 1;
    else runs.push({ row, count: 1 });
  }
  return runs;
}
