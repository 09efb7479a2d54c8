import { type Finding, verdicts } from '../press/finding.js';
import type { Press } from '../press/press.js';
import { quoted } from '../quantity/cellValue.js';
import type { Shop } from '../shop/readShop.js';
import { nameKey } from '../shop/table.js';
import type { Check } from './check.js';
import { checkOnPress, type ReadyRow } from './checkOnPress.js';
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

/** All presses are tried; the best verdict wins, then the smaller share. */
function bestPress(row: ReadyRow, shop: Shop, asked: boolean): OnPress {
  const tried = shop.presses.map((press): Tried => {
    const checks = checkOnPress(press, row, shop, asked);
    return { press, checks, findings: checks.flatMap((each) => each.findings) };
  });
  const { press, checks, findings } = tried.reduce((best, each) => (isBetter(each, best) ? each : best));
  const runs = rank(findings) >= verdicts.indexOf('Near limit');
  const choice = runs
    ? `No press given: ${press.name} chosen of ${tried.length}.`
    : `No press given, and none is sure to run it: ${press.name} comes nearest.`;
  return { checks, press: press.name, choice };
}

function isBetter(a: Tried, b: Tried): boolean {
  const difference = rank(a.findings) - rank(b.findings);
  return difference > 0 || (difference === 0 && largestUse(a.findings) < largestUse(b.findings));
}

function rank(findings: readonly Finding[]): number {
  return Math.min(verdicts.length - 1, ...findings.map((finding) => verdicts.indexOf(finding.verdict)));
}

function largestUse(findings: readonly Finding[]): number {
  return Math.max(0, ...findings.map((finding) => finding.use ?? 0));
}
