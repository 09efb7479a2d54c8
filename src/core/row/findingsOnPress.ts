import { type Finding, verdicts } from '../press/finding.js';
import type { Press } from '../press/press.js';
import { quoted } from '../quantity/cellValue.js';
import type { Shop } from '../shop/readShop.js';
import { nameKey } from '../shop/table.js';
import type { Working } from '../working/working.js';
import { checkOnPress, type ReadyRow } from './checkOnPress.js';
import type { RowJob } from './rowJob.js';

export interface OnPress {
  findings: Finding[];
  /** The press the findings stand for; undefined where none could be tried. */
  press?: string;
  /** How the press was chosen, where the row names none. */
  choice?: string;
}

/**
 * What the press of the row has to say; where the row names none, what the best of all presses has.
 * A row that could not be read has nothing to hold against a press.
 */
export function findingsOnPress(
  job: RowJob,
  row: ReadyRow | undefined,
  shop: Shop,
  working?: Working,
): OnPress {
  if (shop.presses.length === 0) return noPress('The shop has no press. Add one on the Shop sheet.');
  const { press: name } = job;
  if (name === undefined) return row ? bestPress(row, shop, working) : { findings: [] };
  const press = shop.presses.find((each) => nameKey(each.name) === nameKey(name));
  if (!press) {
    const names = shop.presses.map((each) => each.name).join(', ');
    return noPress(`${quoted(name)} is not a press of the shop. Presses: ${names}.`);
  }
  return { findings: row ? checkOnPress(press, row, shop, working) : [], press: press.name };
}

function noPress(note: string): OnPress {
  return { findings: [{ verdict: 'No press', governs: 'press', note }] };
}

interface Tried {
  press: Press;
  findings: Finding[];
}

/** All presses are tried; the best verdict wins, then the smaller share. */
function bestPress(row: ReadyRow, shop: Shop, working?: Working): OnPress {
  const tried = shop.presses.map((press): Tried => ({ press, findings: checkOnPress(press, row, shop) }));
  const { press, findings } = tried.reduce((best, each) => (isBetter(each, best) ? each : best));
  const runs = rank(findings) >= verdicts.indexOf('Near limit');
  return {
    findings: working ? checkOnPress(press, row, shop, working) : findings,
    press: press.name,
    choice: runs
      ? `No press given: ${press.name} chosen of ${tried.length}.`
      : `No press given, and none is sure to run it: ${press.name} comes nearest.`,
  };
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
