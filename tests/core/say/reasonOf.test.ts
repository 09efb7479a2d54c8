import { expect, it } from 'vitest';
import type { FindingOf } from '../../../src/core/check/finding.js';
import { reasonOf } from '../../../src/core/say/reasonOf.js';

const share: FindingOf<'share'> = {
  rule: 'share',
  outcome: 'held',
  verdict: 'OK',
  press: 'Bay A',
  operation: 'punch force',
  use: 0.4,
  forceN: 80_000,
  shareToUse: 0.8,
};
const row = (findings: FindingOf<'share' | 'station'>[], deciding = findings[0]) => ({
  blank: false as const,
  verdict: findings[0]?.verdict ?? ('OK' as const),
  ...(deciding ? { deciding } : {}),
  route: [],
  findings,
  readings: [],
});

it('is the sentence of the worst finding', () => {
  const lacking: FindingOf<'station'> = {
    rule: 'station',
    outcome: 'failed',
    verdict: 'No station',
    press: 'Bay A',
    station: 'notcher',
    needed: 'notcher',
  };
  expect(reasonOf(row([lacking, share]), 'in')).toBe('Bay A has no notcher.');
});

it('is what decided where there is nothing to say', () => {
  expect(reasonOf(row([share]), 'in')).toBe('punch force');
  expect(reasonOf(row([]), 'in')).toBe('');
});
