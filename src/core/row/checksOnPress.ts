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
 * All presses are tried; one that runs the row wins, with the better verdict and then the smaller share. Where none runs
 * it, one of which it is not known comes before those that fail, and of these the one that has most of the stations. A
 * press with a cell that the row needs and that cannot be read might be better or worse than any other: where no other
 * runs the row, that cell must be put right first.
 */
function bestPress(row: ReadyRow, shop: Shop, asked: boolean): OnPress {
  const tried = shop.presses.map((press): Tried => {
    const checks = checkOnPress(press, row, shop, asked);
    return { press, checks, findings: checks.flatMap((each) => each.findings) };
  });
  const [readable, unread] = [tried.filter(isReadable), tried.filter((each) => !isReadable(each))];
  const best = bestOf(readable);
  const next = bestOf(unread);
  if (best && (runs(best) || !next)) return chosen(best, readable, unread);
  return next ? waitingFor(next, best, unread) : { checks: [] };
}

/** The best of the presses that could be tried, and the presses that could not. */
function chosen(best: Tried, readable: readonly Tried[], unread: readonly Tried[]): OnPress {
  const { name } = best.press;
  if (runs(best)) {
    const choice = `No press given: ${name} chosen of ${readable.length}${unread.length > 0 ? ' that can be read' : ''}.`;
    return { checks: best.checks, press: name, choice: [choice, ...unread.map(notTried)].join(' ') };
  }
  const lacking = unread.length === 0 && readable.length > 1 ? lackedByAll(readable) : [];
  const checks = best.checks.map((each) => ({ ...each, findings: each.findings.map(ofNone(lacking)) }));
  const told = best.findings.filter(({ note }) => note !== '');
  if (told.every(({ station = '' }) => lacking.includes(station))) return { checks, press: name };
  const choice = `No press given, and none is sure to run it: ${name} comes nearest.`;
  return { checks, press: name, choice: [choice, ...unread.map(notTried)].join(' ') };
}

/** Stations the row needs that no press has. */
function lackedByAll([first, ...others]: readonly Tried[]): string[] {
  const lacked = ({ findings }: Tried) =>
    findings.flatMap(({ verdict, station }) => (verdict === 'No station' ? (station ?? []) : []));
  return first
    ? lacked(first).filter((station) => others.every((each) => lacked(each).includes(station)))
    : [];
}

/** A finding of the nearest press, as one of all where no press has the station. */
function ofNone(lacking: readonly string[]): (finding: Finding) => Finding {
  return (finding) => {
    const { station = '' } = finding;
    if (!lacking.includes(station)) return finding;
    return { ...finding, note: `No press has ${/^[aeiou]/.test(station) ? 'an' : 'a'} ${station}.` };
  };
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
  const [own, other] = [merits(a), merits(b)];
  const at = own.findIndex((merit, index) => merit !== other[index]);
  return at >= 0 && (own[at] ?? 0) > (other[at] ?? 0);
}

const kinds = ['fails', 'unknown', 'passes'] as const;

/** What speaks for a press, the weightiest first; more is better. */
function merits({ checks }: Tried): number[] {
  const judged = checks.map((each) => each.findings.filter(({ ofPressCell }) => !ofPressCell));
  const findings = judged.flat();
  const rank = Math.min(verdicts.length - 1, ...findings.map(({ verdict }) => verdicts.indexOf(verdict)));
  const hasStation = (found: Finding[]) =>
    found.every(({ verdict, station }) => verdict !== 'No station' && station === undefined);
  return [
    kinds.indexOf(verdictKind(verdicts[rank] ?? 'OK')),
    judged.filter(hasStation).length,
    rank,
    -findings.filter(({ verdict }) => verdict === 'Not checked').length,
    -Math.max(0, ...findings.map(({ use }) => use ?? 0)),
  ];
}
