import { bySeverity, type Finding, type Verdict, verdicts } from '../press/finding.js';
import type { Press } from '../press/press.js';
import { verdictKind } from '../press/verdictKind.js';
import { quoted } from '../quantity/cellValue.js';
import type { Shop } from '../shop/readShop.js';
import { nameKey } from '../shop/table.js';
import type { Check } from './check.js';
import { checkOnPress, needsPress, type ReadyRow } from './checkOnPress.js';
import type { RowJob } from './rowJob.js';

export interface OnPress {
  checks: Check[];
  /** The press the checks stand for; undefined where none could be tried. */
  press?: string;
  /** How the press was chosen, where the row names none. */
  choice?: string;
}

/**
 * The checks on the press of the row; where the row names none, on the best of all presses.
 * A row that could not be read has nothing to hold against a press.
 */
export function checksOnPress(job: RowJob, row: ReadyRow | undefined, shop: Shop, asked: boolean): OnPress {
  if (job.press === undefined && row && !needsPress(row)) return { checks: [] };
  if (shop.presses.length === 0) return noPress('The shop has no press. Add one on the Shop sheet.');
  const { press: name } = job;
  if (name === undefined) return row ? bestPress(row, shop, asked) : { checks: [] };
  const press = shop.presses.find((each) => nameKey(each.name) === nameKey(name));
  if (!press) {
    const names = shop.presses.map((each) => each.name).join(', ');
    return noPress(`${quoted(name)} is not a press of the shop. Presses: ${names}.`);
  }
  return { checks: row ? checkOnPress(press, row, shop, asked) : [], press: press.name };
}

function noPress(note: string): OnPress {
  return { checks: [{ findings: [{ verdict: 'No press', governs: 'press', note }], steps: [] }] };
}

interface Tried {
  press: Press;
  checks: Check[];
  findings: Finding[];
}

/**
 * All presses are tried; the best verdict wins, then the smaller share. A press with a cell that the row needs and
 * that cannot be read might be better or worse than any other: where no other runs the row, that cell must be put
 * right first.
 */
function bestPress(row: ReadyRow, shop: Shop, asked: boolean): OnPress {
  const tried = shop.presses.map((press): Tried => {
    const checks = checkOnPress(press, row, shop, asked);
    return { press, checks, findings: checks.flatMap((each) => each.findings) };
  });
  const [readable, unread] = [tried.filter(isReadable), tried.filter((each) => !isReadable(each))];
  const best = bestOf(readable);
  const next = bestOf(unread);
  if (best && (runs(best) || !next)) return chosen(best, readable.length, unread);
  return next ? waitingFor(next, best, unread) : { checks: [] };
}

/** The best of the presses that could be tried, and the presses that could not. */
function chosen(best: Tried, of: number, unread: readonly Tried[]): OnPress {
  const { name } = best.press;
  const choice = runs(best)
    ? `No press given: ${name} chosen of ${of}${unread.length > 0 ? ' that can be read' : ''}.`
    : `No press given, and none is sure to run it: ${name} comes nearest.`;
  return { checks: best.checks, press: name, choice: [choice, ...unread.map(notTried)].join(' ') };
}

/** No press that can be read runs the row, so one that cannot must be put right first. */
function waitingFor(next: Tried, best: Tried | undefined, unread: readonly Tried[]): OnPress {
  const { name } = next.press;
  const nearest = best ? `; of the others ${best.press.name} comes nearest: ${verdictOf(best)}` : '';
  const choice = `No press given, and none is sure to run it: ${name} has a cell that cannot be read${nearest}.`;
  const others = unread.filter((each) => each !== next);
  return { checks: next.checks, press: name, choice: [choice, ...others.map(notTried)].join(' ') };
}

function notTried({ press, findings }: Tried): string {
  const problems = findings.filter(({ ofPressCell }) => ofPressCell).map(({ note }) => note);
  return `${press.name} was not tried: ${[...new Set(problems)].join(' ')}`;
}

function isReadable({ findings }: Tried): boolean {
  return !findings.some(({ ofPressCell }) => ofPressCell);
}

function runs(tried: Tried): boolean {
  return verdictKind(verdictOf(tried)) === 'passes';
}

function verdictOf({ findings }: Tried): Verdict {
  return [...findings].sort(bySeverity)[0]?.verdict ?? 'OK';
}

function bestOf(tried: readonly Tried[]): Tried | undefined {
  return tried.reduce<Tried | undefined>(
    (best, each) => (best === undefined || isBetter(each, best) ? each : best),
    undefined,
  );
}

/** By what can be judged: cells that cannot be read are left out. */
function isBetter(a: Tried, b: Tried): boolean {
  const [own, other] = [a, b].map(({ findings }) => findings.filter(({ ofPressCell }) => !ofPressCell));
  const difference = rank(own ?? []) - rank(other ?? []);
  return difference > 0 || (difference === 0 && largestUse(own ?? []) < largestUse(other ?? []));
}

function rank(findings: readonly Finding[]): number {
  return Math.min(verdicts.length - 1, ...findings.map((finding) => verdicts.indexOf(finding.verdict)));
}

function largestUse(findings: readonly Finding[]): number {
  return Math.max(0, ...findings.map((finding) => finding.use ?? 0));
}
