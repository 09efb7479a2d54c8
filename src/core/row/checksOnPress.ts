import type { Finding } from '../check/finding.js';
import { hardestOf, worstVerdict } from '../check/severity.js';
import { type Verdict, type VerdictKind, verdictKind, verdicts } from '../check/verdict.js';
import type { Failure } from '../inputError.js';
import type { Press } from '../press/press.js';
import type { Station } from '../press/item/pressItem.js';
import type { Shop } from '../shop/readShop.js';
import { nameKey } from '../shop/table.js';
import type { Check } from './check.js';
import { checkOnPress } from './checkOnPress.js';
import { needsPress } from './job/needsPress.js';
import type { PreparedRow } from './prepareRow.js';
import type { RowFact } from '../check/rowFact.js';
import type { RowJob } from './job/rowJob.js';

export interface OnPress {
  checks: Check[];
  /** The press the checks stand for; undefined where none could be tried. */
  press?: string;
  /** How the press was chosen, where the row names none. */
  choice?: PressChoice;
}

/** How a press was chosen where the row names none. */
export interface PressChoice {
  /** `sure`: it runs the row. `nearest`: none is sure to. `unread`: it has a cell that the row needs and that cannot be read. */
  is: 'sure' | 'nearest' | 'unread';
  press: string;
  /** How many presses could be tried. */
  of: number;
  /** Presses that could not be tried, since a cell of them cannot be read. */
  notTried: readonly { press: string; failures: readonly Failure[] }[];
  /** Of those that can be read, the one that comes nearest. */
  nearest?: { press: string; verdict: Verdict };
}

/**
 * The checks on the press of the row; where the row names none, on the best of all presses.
 * A row that could not be read has nothing to check against a press.
 */
export function checksOnPress(
  job: RowJob,
  prepared: PreparedRow | undefined,
  shop: Shop,
  asked: boolean,
): OnPress {
  if (prepared && !needsPress(prepared.row)) return offPress(job);
  if (shop.presses.length === 0) return noPress({ rule: 'no press in the shop' });
  const { press: name } = job;
  if (name === undefined) return prepared ? bestPress(prepared, shop, asked) : { checks: [] };
  const key = nameKey(name);
  const press = shop.presses.find((each) => each.name === name || nameKey(each.name) === key);
  if (!press) {
    return noPress({ rule: 'press not known', name, names: shop.presses.map((each) => each.name) });
  }
  return { checks: prepared ? tryPress(press, prepared, shop, asked) : [], press: press.name };
}

function tryPress(press: Press, { row, layouts }: PreparedRow, shop: Shop, asked: boolean): Check[] {
  return checkOnPress(press, row, layouts, shop, asked);
}

function offPress({ press }: RowJob): OnPress {
  const finding: Finding = { rule: 'off press', outcome: 'not applicable', verdict: 'Off press' };
  return { checks: [{ findings: [finding], steps: [] }], ...(press === undefined ? {} : { press }) };
}

function noPress(fact: RowFact): OnPress {
  return { checks: [{ findings: [{ outcome: 'failed', verdict: 'No press', ...fact }], steps: [] }] };
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
function bestPress(prepared: PreparedRow, shop: Shop, asked: boolean): OnPress {
  const tried = shop.presses.map((press): Tried => {
    const checks = tryPress(press, prepared, shop, asked);
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
  const press = best.press.name;
  const choice = { press, of: readable.length, notTried: unread.map(notTriedOf) };
  if (runs(best)) return { checks: best.checks, press, choice: { is: 'sure', ...choice } };
  const lacking = unread.length === 0 && readable.length > 1 ? lackedByAll(readable) : [];
  const checks = best.checks.map((each) => ({ ...each, findings: each.findings.map(ofAll(lacking)) }));
  const told = best.findings.filter(({ outcome }) => outcome === 'failed' || outcome === 'open');
  if (told.every(({ station }) => station !== undefined && lacking.includes(station)))
    return { checks, press };
  return { checks, press, choice: { is: 'nearest', ...choice } };
}

/** Stations the row needs that no press has. */
function lackedByAll([first, ...others]: readonly Tried[]): Station[] {
  const lacked = ({ findings }: Tried) =>
    findings.flatMap(({ verdict, station }) => (verdict === 'No station' ? (station ?? []) : []));
  return first
    ? lacked(first).filter((station) => others.every((each) => lacked(each).includes(station)))
    : [];
}

/** A finding of the nearest press, as one of all where no press has the station. */
function ofAll(lacking: readonly Station[]): (finding: Finding) => Finding {
  return (finding) => {
    if (finding.rule !== 'station' || !lacking.includes(finding.needed)) return finding;
    return { ...finding, ofAll: true };
  };
}

/** No press that can be read runs the row, so one that cannot must be put right first. */
function waitingFor(next: Tried, best: Tried | undefined, unread: readonly Tried[]): OnPress {
  const press = next.press.name;
  const notTried = unread.filter((each) => each !== next).map(notTriedOf);
  const nearest = best ? { nearest: { press: best.press.name, verdict: worstVerdict(best.findings) } } : {};
  return {
    checks: next.checks,
    press,
    choice: { is: 'unread', press, of: unread.length, notTried, ...nearest },
  };
}

function notTriedOf({ press, findings }: Tried): PressChoice['notTried'][number] {
  const failures = findings.flatMap((finding) =>
    finding.rule === 'refusal' && finding.ofPressCell ? [finding.failure] : [],
  );
  return { press: press.name, failures };
}

/** Whether every cell of the press that the row needs can be read. */
function isReadable({ findings }: Tried): boolean {
  return findings.every(({ ofPressCell }) => !ofPressCell);
}

/** The press itself has nothing against the row: distances of the drawing may be open. */
function runs({ findings }: Tried): boolean {
  const kind = verdictKind(worstVerdict(findings));
  return kind === 'passes' || kind === 'open' || kind === 'elsewhere';
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

const kinds: readonly VerdictKind[] = ['fails', 'unknown', 'open', 'elsewhere', 'passes'];

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
    -(hardestOf(findings)?.use ?? 0),
  ];
}
