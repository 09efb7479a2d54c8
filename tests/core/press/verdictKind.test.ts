import { describe, expect, it } from 'vitest';
import { verdictKind, verdicts } from '../../../src/core/check/verdict.js';

describe('what a verdict says of a row', () => {
  it.each([
    ['passes', ['Near limit', 'OK']],
    ['unknown', ['Check input', 'Not checked']],
    [
      'fails',
      [
        'No press',
        'No station',
        'Too big',
        "Can't reach",
        'Hole too small',
        'Holes too close',
        'Edge short',
        'Over capacity',
        'No tool',
      ],
    ],
  ] as const)('%s: %s', (kind, words) => {
    expect(verdicts.filter((verdict) => verdictKind(verdict) === kind)).toEqual(words);
  });
});
