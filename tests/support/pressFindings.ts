import type { PressFinding } from '../../src/core/check/finding.js';
import type { Verdict } from '../../src/core/check/verdict.js';
import { refusal } from '../../src/core/check/finding.js';

/** A share of a rating. */
export function share(verdict: 'OK' | 'Near limit' | 'Over capacity', use: number): PressFinding {
  const outcome = verdict === 'Over capacity' ? 'failed' : 'held';
  const base = { rule: 'share', operation: 'punch force', forceN: 1000, shareToUse: 0.8 } as const;
  return { ...base, outcome, verdict, press: 'Bay A', use };
}

/** A size that the punch throat was asked of. */
export function throat(verdict: Verdict): PressFinding {
  const outcome = verdict === 'OK' ? 'held' : 'failed';
  const base = { rule: 'press limit', item: 'punchThroat', sized: { is: 'hole to toe' } } as const;
  return { ...base, outcome, verdict, press: 'Bay A', given: 100, limit: 90 };
}

export const blank: PressFinding = {
  rule: 'blank item',
  outcome: 'open',
  verdict: 'Not checked',
  press: 'Bay A',
  item: 'punchThroat',
};

export const unreadable = refusal(
  { code: 'invalid', argument: 'Throat', received: 'x', problem: "'x' is no length.", allowed: 'Write 12.' },
  'punch throat',
  { press: 'Bay A', ofPressCell: true },
);
