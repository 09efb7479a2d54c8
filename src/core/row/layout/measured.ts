import type { CodeBasis, DistanceFact, DistanceKind, Thing } from '../../check/rowFact.js';
import type { Outcome } from '../../check/finding.js';
import type { Range } from '../../check/range.js';
import type { Point } from '../../part/point.js';
import { toleranceMm } from '../../part/tolerance.js';

/** Unit conversions leave rounding in the last digits; a distance at its limit is held. */
const roundingShare = 1e-9;

/** One distance with what it must be at least: it fails under `limit.least` and holds from `limit.most`. */
export interface Measured {
  kind: DistanceKind;
  from: DistanceFact['from'];
  given: Range;
  limit: Range;
  at: readonly [Point, Point];
  basis?: CodeBasis;
}

/** A distance is held if its worst is, and fails if its best does. */
export function outcomeOf({ given, limit }: Measured): Exclude<Outcome, 'not applicable'> {
  if (given.most < reduced(limit.least)) return 'failed';
  return given.least >= reduced(limit.most) ? 'held' : 'open';
}

function reduced(limitMm: number): number {
  return limitMm * (1 - roundingShare) - toleranceMm;
}

const weights = { held: 0, open: 1, failed: 2 } as const;

interface Worst {
  fact: DistanceFact;
  outcome: keyof typeof weights;
  marginMm: number;
}

/** Sets the kinds apart in one number with what a distance is between. */
const kindNumber: Record<DistanceKind, number> = {
  'edge by code': 0,
  'edge by practice': 1,
  heel: 2,
  'spacing by code': 3,
  'clear distance by code': 4,
  'spacing by practice': 5,
  'hole to bend': 6,
  flange: 7,
  'between cuts': 8,
};
const kindCount = 9;

/** The worst distance of each kind between two groups of things, with how many there were. */
export class WorstDistances {
  private readonly worst = new Map<number, Worst>();

  /** `key` tells the groups apart that the distance is between; `more` is asked only for one that is the worst so far. */
  add(
    measured: Measured,
    key: number,
    more: () => { face: DistanceFact['face']; between: readonly [Thing, Thing] },
    repeats = 1,
  ): void {
    const outcome = outcomeOf(measured);
    const marginMm =
      outcome === 'failed'
        ? measured.given.most - measured.limit.least
        : measured.given.least - measured.limit.most;
    const fullKey = key * kindCount + kindNumber[measured.kind];
    const known = this.worst.get(fullKey);
    if (known && !isWorse(outcome, marginMm, known)) {
      known.fact.pairs += repeats;
      if (known.outcome === outcome) known.fact.repeats += repeats;
      return;
    }
    const { kind, from, given, limit, at, basis } = measured;
    const { face, between } = more();
    const same = known?.outcome === outcome ? known.fact.repeats : 0;
    const fact: DistanceFact = {
      rule: 'distance',
      kind,
      from,
      given,
      limit,
      at,
      face,
      between,
      pairs: (known?.fact.pairs ?? 0) + repeats,
      repeats: same + repeats,
      missing: [],
    };
    if (basis) fact.basis = basis;
    this.worst.set(fullKey, { fact, outcome, marginMm });
  }

  [Symbol.iterator](): IterableIterator<Worst> {
    return this.worst.values();
  }
}

function isWorse(outcome: Worst['outcome'], marginMm: number, than: Worst): boolean {
  return outcome === than.outcome ? marginMm < than.marginMm : weights[outcome] > weights[than.outcome];
}
