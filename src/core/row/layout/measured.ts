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

/** The worst distance of each kind between two groups of things, with how many there were. */
export class WorstDistances {
  private readonly worst = new Map<string, Worst>();

  add(
    measured: Measured,
    key: string,
    more: () => { face: DistanceFact['face']; between: readonly [Thing, Thing] },
    repeats = 1,
  ): void {
    const outcome = outcomeOf(measured);
    const marginMm =
      outcome === 'failed'
        ? measured.given.most - measured.limit.least
        : measured.given.least - measured.limit.most;
    const fullKey = `${measured.kind} ${key}`;
    const known = this.worst.get(fullKey);
    if (!known || isWorse({ outcome, marginMm }, known)) {
      const same = known?.outcome === outcome ? known.fact.repeats : 0;
      const pairs = (known?.fact.pairs ?? 0) + repeats;
      const fact: DistanceFact = {
        rule: 'distance',
        ...measured,
        ...more(),
        pairs,
        repeats: same + repeats,
        missing: [],
      };
      this.worst.set(fullKey, { fact, outcome, marginMm });
      return;
    }
    known.fact.pairs += repeats;
    if (known.outcome === outcome) known.fact.repeats += repeats;
  }

  [Symbol.iterator](): IterableIterator<Worst> {
    return this.worst.values();
  }
}

function isWorse(a: Pick<Worst, 'outcome' | 'marginMm'>, b: Worst): boolean {
  if (a.outcome !== b.outcome) return weights[a.outcome] > weights[b.outcome];
  return a.marginMm < b.marginMm;
}
