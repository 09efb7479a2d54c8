import { describe, expect, it } from 'vitest';
import type { Thing } from '../../../../src/core/check/rowFact.js';
import { exactly, type Range } from '../../../../src/core/check/range.js';
import { type Measured, outcomeOf, WorstDistances } from '../../../../src/core/row/layout/measured.js';

const at = [
  { x: 0, y: 0 },
  { x: 0, y: 0 },
] as const;
const measured = (given: Range, limit: Range): Measured => ({
  kind: 'edge by code',
  from: 'center',
  given,
  limit,
  at,
});

describe('outcomeOf', () => {
  it('holds a distance at its limit, and a hair under it for the rounding of units', () => {
    expect(outcomeOf(measured(exactly(30), exactly(30)))).toBe('held');
    expect(outcomeOf(measured(exactly(30 - 1e-7), exactly(30)))).toBe('held');
    expect(outcomeOf(measured(exactly(29.99), exactly(30)))).toBe('failed');
  });

  it.each<[Range, Range, string]>([
    // The best of the places fails; the worst holds; one fails and one holds.
    [{ least: 10, most: 29 }, exactly(30), 'failed'],
    [{ least: 30, most: 90 }, exactly(30), 'held'],
    [{ least: 29, most: 90 }, exactly(30), 'open'],
    // The limit is at least 20 and at most 30.
    [exactly(19), { least: 20, most: 30 }, 'failed'],
    [exactly(25), { least: 20, most: 30 }, 'open'],
    [exactly(30), { least: 20, most: 30 }, 'held'],
  ])('of %o against %o is %s', (given, limit, outcome) => {
    expect(outcomeOf(measured(given, limit))).toBe(outcome);
  });
});

describe('WorstDistances', () => {
  const more = (index: number) => () => ({
    face: 'plate' as const,
    between: [
      { is: 'hole', group: 0, index },
      { is: 'bend', index: 0 },
    ] as [Thing, Thing],
  });

  it('keeps the worst of each kind, and counts all and those that ended as it did', () => {
    const worst = new WorstDistances();
    // 5 over; 2 under; 1 under; open; 4 over.
    worst.add(measured(exactly(35), exactly(30)), 1, more(1));
    worst.add(measured(exactly(28), exactly(30)), 1, more(2));
    worst.add(measured(exactly(29), exactly(30)), 1, more(3));
    worst.add(measured({ least: 0, most: 90 }, exactly(30)), 1, more(4), 3);
    worst.add(measured(exactly(34), exactly(30)), 2, more(5));
    const [first, second] = [...worst];
    expect(first).toMatchObject({ outcome: 'failed', fact: { pairs: 6, repeats: 2, given: exactly(28) } });
    expect(first?.fact.between[0]).toEqual({ is: 'hole', group: 0, index: 2 });
    expect(second).toMatchObject({ outcome: 'held', fact: { pairs: 1, repeats: 1 } });
  });

  it('takes what is open for worse than what is held, whatever the margins', () => {
    const worst = new WorstDistances();
    worst.add(measured({ least: 29.9, most: 90 }, exactly(30)), 1, more(1));
    worst.add(measured(exactly(30), exactly(30)), 1, more(2));
    expect([...worst]).toMatchObject([{ outcome: 'open', fact: { pairs: 2, repeats: 1 } }]);
  });
});
