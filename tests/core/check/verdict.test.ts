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
    ['unknown', ['Check input', 'Not checked']],
    [
      'fails',
      [
        'No press',
        'No station',
        'Too big',
        "Can't reach",
        'Hole too small',
        'Over capacity',
        'Holes too close',
        'Edge short',
        'No tool',
      ],
    ],
  ] as const)('%s: %s', (kind, words) => {
    expect(verdicts.filter((verdict) => verdictKind(verdict) === kind)).toEqual(words);
  });
});
