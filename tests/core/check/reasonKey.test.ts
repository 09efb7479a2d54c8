import { describe, expect, it } from 'vitest';
import { type Finding, type FindingOf, refusal } from '../../../src/core/check/finding.js';
import { exactly } from '../../../src/core/check/range.js';
import { reasonKey } from '../../../src/core/check/reasonKey.js';

const tooLong: FindingOf<'press limit'> = {
  rule: 'press limit',
  outcome: 'failed',
  verdict: 'Too big',
  press: 'Bay A',
  item: 'longestBar',
  sized: { is: 'part' },
  given: 7000,
  limit: 6000,
};

const short: FindingOf<'distance'> = {
  rule: 'distance',
  outcome: 'failed',
  verdict: 'Edge short',
  group: 0,
  kind: 'edge by code',
  from: 'center',
  given: exactly(25),
  limit: exactly(32),
  basis: { code: 'AISC', edge: 'sheared', bolt: '3/4 in' },
  face: 'plate',
  between: [
    { is: 'hole', group: 0, index: 1 },
    { is: 'edge', cause: { is: 'left end' }, kind: 'sheared' },
  ],
  at: [
    { x: 25, y: 50 },
    { x: 0, y: 50 },
  ],
  pairs: 4,
  repeats: 1,
  missing: [],
};

const unread = (argument: string, received: string, cause?: 'turned into a date'): Finding =>
  refusal(
    { code: 'invalid', argument, received, problem: received, allowed: '', ...(cause && { cause }) },
    argument,
  );

describe('findings that say the same of two rows', () => {
  it.each<[string, Finding, Finding]>([
    ['a size over one limit', tooLong, { ...tooLong, given: 9000 }],
    [
      'a distance under one least, at whichever place',
      short,
      { ...short, given: exactly(20), group: 1, repeats: 3, at: [short.at[1], short.at[0]] },
    ],
    ['a cell that holds the same', unread('Grade', 'A99'), unread('Grade', 'A99')],
    [
      'sizes that became dates',
      unread('Hole', '45724', 'turned into a date'),
      unread('Edge', '42370', 'turned into a date'),
    ],
  ])('%s', (_, one, other) => {
    expect(reasonKey(one)).toBe(reasonKey(other));
  });

  it.each<[string, Finding, Finding]>([
    ['another press', tooLong, { ...tooLong, press: 'Bay B' }],
    ['another limit', tooLong, { ...tooLong, limit: 6100 }],
    ['another item', tooLong, { ...tooLong, item: 'shearHeaviestBar' as never }],
    ['another least', short, { ...short, limit: exactly(38) }],
    ['another code', short, { ...short, basis: { code: 'CSA', edge: 'sheared', bolt: '3/4 in' } }],
    ['other missing cells', short, { ...short, missing: [{ cell: 'Edge', group: 0 }] }],
    ['open, not failed', short, { ...short, outcome: 'open', verdict: 'OK so far' }],
    ['a cell that holds something else', unread('Grade', 'A99'), unread('Grade', 'B99')],
    ['a date and another number', unread('Hole', '45724', 'turned into a date'), unread('Hole', '45724')],
  ])('not with %s', (_, one, other) => {
    expect(reasonKey(one)).not.toBe(reasonKey(other));
  });
});
