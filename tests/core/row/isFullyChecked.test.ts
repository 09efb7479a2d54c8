import { describe, expect, it } from 'vitest';
import type { Finding } from '../../../src/core/check/finding.js';
import { type Verdict, verdicts } from '../../../src/core/check/verdict.js';
import { isFullyChecked } from '../../../src/core/row/isFullyChecked.js';

const row = (verdict: Verdict, ...findings: Finding[]) => ({
  blank: false as const,
  verdict,
  route: [],
  findings,
  readings: [],
});

describe('a row that is fully checked', () => {
  it('has a word that says so', () => {
    const open = verdicts.filter((verdict) => !isFullyChecked(row(verdict)));
    expect(open).toEqual(['Check input', 'No part', 'Not checked', 'OK so far']);
  });

  it('has no open check, whatever its word', () => {
    const finding: Finding = {
      rule: 'blank item',
      outcome: 'open',
      verdict: 'Not checked',
      item: 'punchThroat',
    };
    expect(isFullyChecked(row('Too big', finding))).toBe(false);
    expect(isFullyChecked(row('Too big', { ...finding, outcome: 'held' }))).toBe(true);
  });
});
