import { describe, expect, it } from 'vitest';
import { verdictKind, verdicts } from '../../../src/core/check/verdict.js';

describe('verdicts', () => {
  it('are different words, the worst first and OK last', () => {
    expect(new Set(verdicts).size).toBe(verdicts.length);
    expect([verdicts[0], verdicts.at(-1)]).toEqual(['Check input', 'OK']);
  });
});

describe('what a verdict says of a row', () => {
  it.each([
    ['passes', ['Near limit', 'OK']],
    ['open', ['OK so far']],
    ['elsewhere', ['Off press']],
    ['unknown', ['Check input', 'No part', 'Not checked']],
  ] as const)('%s: %s', (kind, words) => {
    expect(verdicts.filter((verdict) => verdictKind(verdict) === kind)).toEqual(words);
  });

  it('fails: every other word', () => {
    const others = ['passes', 'open', 'elsewhere', 'unknown'] as const;
    const rest = verdicts.filter((verdict) => !others.some((kind) => verdictKind(verdict) === kind));
    expect(rest).toHaveLength(verdicts.length - 7);
    for (const verdict of rest) expect(verdictKind(verdict)).toBe('fails');
    expect(rest).toContain('Over capacity');
  });
});
