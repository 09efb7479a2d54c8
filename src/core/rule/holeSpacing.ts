import { atMost } from '../atMost.js';
import { requirePositive } from '../requireRange.js';
import { type Hole, leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import type { EdgeCode } from './edgeDistance.js';
import { type BoltSize, boltValue } from './boltSize.js';
import type { LeastDistance, MeasuredFrom, UnknownDistance } from './leastDistance.js';
import type { PairDirection } from './pairDirection.js';
import { leastPitchMm } from './pitch.js';

/** A hole and the bolt it is for, where that is known. */
export interface BoltedHole {
  hole: Hole;
  bolt?: BoltSize;
}

export interface HoleSpacingInput {
  /** The two holes; the same one twice for holes of a group. */
  holes: readonly [BoltedHole, BoltedHole];
  /** EN tells lines from pairs side by side; the others do not look at it. */
  direction: PairDirection;
  code: EdgeCode;
}

/** p1, p2, and L of staggered rows. */
const enRule: Record<PairDirection, { factor: number; symbol: string; name: string }> = {
  along: { factor: 2.2, symbol: 'p1', name: 'p1' },
  across: { factor: 2.4, symbol: 'p2', name: 'p2' },
  oblique: { factor: 2.4, symbol: 'L', name: 'L of staggered rows' },
};

const boltSources: Record<Exclude<EdgeCode, 'EN'>, string> = {
  AISC: 'AISC 360-22 J3.4, until 2016 J3.3',
  'AISC 360-22': 'AISC 360-22 J3.4, until 2016 J3.3',
  CSA: 'CSA S16, minimum pitch (from memory)',
  AS: 'AS 4100, minimum pitch (from memory)',
};

/**
 * The least distance between two holes in a part, by a code. Of two different bolts or holes the larger governs.
 *
 * Formula: AISC 2⅔ · d center to center, and d clear from rim to rim; EN p1 = 2.2 · d0 along the length, p2 = 2.4 · d0
 * across it, L = 2.4 · d0 for staggered holes, with d0 the hole in the part; CSA 2.7 · d; AS 2.5 · d
 * @param input the two holes with their bolts, which EN does not need; how they lie to each other; the code
 * @param working collects the steps when given
 * @returns distance in mm, where it is measured from and the least clear distance, or what is not known
 * Valid for sizes above zero; throws `invalid` otherwise. The direction of force is not known, so the length of the
 * part stands for it. EN lets staggered rows be 1.2 · d0 apart where L ≥ 2.4 · d0; the rows are not held to that,
 * since two holes do not tell whether they are of one connection. EN does not say how slots are measured: they are
 * taken between the nearest centers of their end radii. Slots under CSA and AS are not known.
 * @example leastHoleSpacing({ holes: [hole, hole], direction: 'across', code: 'EN' }) // 52.8 for Ø22
 * Source: AISC 360-22 J3.4 (until 2016 J3.3); EN 1993-1-8 Table 3.3; CSA S16 and AS 4100 (from memory).
 */
export function leastHoleSpacing(input: HoleSpacingInput, working?: Working): LeastDistance {
  for (const { hole, bolt } of input.holes) {
    requirePositive('Hole', leastDimensionMm(hole));
    if (bolt) requirePositive('Bolt', bolt.diameterMm);
  }
  return input.code === 'EN' ? enSpacing(input, working) : spacingByBolt(input, input.code, working);
}

function isSlot({ hole }: BoltedHole): boolean {
  return hole.shape === 'slot' && !atMost(hole.lengthMm, hole.widthMm);
}

function enSpacing({ holes, direction }: HoleSpacingInput, working?: Working): LeastDistance {
  const { factor, symbol, name } = enRule[direction];
  const source = `EN 1993-1-8 Table 3.3, ${name}`;
  const holeMm = Math.max(...holes.map(({ hole }) => leastDimensionMm(hole)));
  const leastMm = factor * holeMm;
  if (holes.some(({ hole }) => hole.shape !== 'round' && hole.shape !== 'slot')) {
    const around = Math.max(...holes.map(({ hole }) => punchDiagonalMm(hole)));
    const unknown: UnknownDistance = {
      known: false,
      why: 'shape of the hole',
      failsUnderMm: leastMm,
      source,
    };
    return holes.some(isSlot) ? unknown : { ...unknown, holdsFromMm: factor * around };
  }
  const measuredFrom: MeasuredFrom = holes.some(isSlot) ? 'end radius center' : 'center';
  working?.step({
    title: 'Least spacing',
    formula: `${symbol} = ${factor} · d0`,
    values: [lengthValue('d0', 'larger hole in the part', holeMm)],
    result: lengthValue(symbol, `least spacing, ${measuredFrom} to ${measuredFrom}`, leastMm),
    source,
  });
  return { known: true, leastMm, measuredFrom, source };
}

function spacingByBolt(
  { holes }: HoleSpacingInput,
  code: Exclude<EdgeCode, 'EN'>,
  working?: Working,
): LeastDistance {
  const [first, second] = holes;
  if (!first.bolt || !second.bolt) return { known: false, why: 'no bolt' };
  const bolt = first.bolt.diameterMm >= second.bolt.diameterMm ? first.bolt : second.bolt;
  const leastMm = leastPitchMm({ bolt, code }, working);
  const source = boltSources[code];
  const known = { known: true, leastMm, measuredFrom: 'center', source } as const;
  if (code === 'CSA' || code === 'AS') {
    return holes.some(isSlot) ? { known: false, why: 'slot', failsUnderMm: leastMm, source } : known;
  }
  working?.step({
    title: 'Least clear distance',
    formula: 'c = d',
    values: [boltValue(bolt)],
    result: lengthValue('c', 'least steel from rim to rim', bolt.diameterMm),
    source,
  });
  return { ...known, clearMm: bolt.diameterMm };
}
