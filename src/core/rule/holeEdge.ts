import { atMost } from '../atMost.js';
import { requirePositive } from '../requireRange.js';
import { type Hole, leastDimensionMm, punchDiagonalMm } from '../tooling/hole.js';
import { lengthValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import type { BoltSize } from './boltSize.js';
import { type EdgeCode, edgeCodes, type EdgeKind, leastEdgeDistanceMm } from './edgeDistance.js';
import { edgeIncrement } from './edgeIncrement.js';
import { ifTabled, type LeastDistance, type UnknownDistance } from './leastDistance.js';
import { standardHoleMm } from './standardHole.js';

/** How a slot lies to an edge. An oblique edge takes the worse, as a slot towards it. */
export type SlotDirection = 'along edge' | 'towards edge' | 'oblique';

export interface HoleEdgeInput {
  bolt?: BoltSize;
  hole: Hole;
  /** The worse, towards the edge, where it is not given. */
  slotDirection?: SlotDirection;
  edge: EdgeKind;
  code: EdgeCode;
}

type SimpleHole = Extract<Hole, { shape: 'round' | 'slot' }>;
type Simple = HoleEdgeInput & { hole: SimpleHole };

const enRoundFactor = 1.2;
const enSlotFactor = 1.5;

/**
 * The least distance from a hole in a part to an edge, by a code.
 *
 * Formula: AISC e = Table J3.4 + C2 for the hole; EN e1, e2 = 1.2 · d0, slots e3, e4 = 1.5 · d0 from the center of
 * the end radius, with d0 the hole in the part; CSA by table and AS e = factor · d for standard holes
 * @param input the bolt, which EN does not need; the hole; how a slot lies to the edge; how the edge was made; the code
 * @param working collects the steps when given
 * @returns distance in mm and where it is measured from, or what is not known, with what is certain nevertheless
 * Valid for sizes above zero; throws `invalid` otherwise. Not known: a bolt the code's table does not have; oversize
 * holes and slots under CSA and AS; squares, rectangles and hexagons, which lie between two round holes.
 * @example leastHoleEdge({ hole: { shape: 'slot', widthMm: 22, lengthMm: 50 }, edge: 'sheared', code: 'EN' }) // 33 from the center of the end radius
 * Source: AISC 360-22 Tables J3.4 to J3.5M; AISC 360-05 at sheared edges; EN 1993-1-8 Table 3.3; CSA S16 and AS 4100
 *   (from memory).
 */
export function leastHoleEdge(input: HoleEdgeInput, working?: Working): LeastDistance {
  const { hole } = input;
  requirePositive('Hole', leastDimensionMm(hole));
  if (input.bolt) requirePositive('Bolt', input.bolt.diameterMm);
  if (hole.shape !== 'round' && hole.shape !== 'slot') return betweenRounds(input);
  const simple = { ...input, hole };
  return input.code === 'EN' ? enEdge(simple, working) : edgeByBolt(simple, working);
}

/** A hole of another shape needs no less than the round hole in it, and no more than the one around it. */
function betweenRounds(input: HoleEdgeInput): UnknownDistance {
  const round = (diameterMm: number) => leastHoleEdge({ ...input, hole: { shape: 'round', diameterMm } });
  const within = round(leastDimensionMm(input.hole));
  const around = round(punchDiagonalMm(input.hole));
  if (!within.known) return within;
  const unknown: UnknownDistance = {
    known: false,
    why: 'shape of the hole',
    failsUnderMm: within.leastMm,
    source: within.source,
  };
  return around.known ? { ...unknown, holdsFromMm: around.leastMm } : unknown;
}

function isSlot(hole: SimpleHole): hole is Extract<Hole, { shape: 'slot' }> {
  return hole.shape === 'slot' && !atMost(hole.lengthMm, hole.widthMm);
}

function enEdge({ hole }: Simple, working?: Working): LeastDistance {
  const slot = isSlot(hole);
  const factor = slot ? enSlotFactor : enRoundFactor;
  const holeMm = leastDimensionMm(hole);
  const leastMm = factor * holeMm;
  const measuredFrom = slot ? 'end radius center' : 'center';
  const source = `EN 1993-1-8 Table 3.3, ${slot ? 'e3 and e4 of slotted holes' : 'e1 and e2'}`;
  working?.step({
    title: 'Least edge distance',
    formula: `e = ${factor} · d0`,
    values: [lengthValue('d0', slot ? 'width of the slot' : 'hole in the part', holeMm)],
    result: lengthValue('e', `least distance, ${measuredFrom} to edge`, leastMm),
    source,
  });
  return { known: true, leastMm, measuredFrom, source };
}

function edgeByBolt(input: Simple, working?: Working): LeastDistance {
  const { bolt, edge, code } = input;
  if (!bolt) return { known: false, why: 'no bolt' };
  const tableMm = ifTabled(() => leastEdgeDistanceMm({ bolt, edge, code, fit: 'standard' }, working));
  if (tableMm === undefined) {
    const otherCodes = edgeCodes.filter((each) => each !== code && isTabled({ ...input, code: each }));
    return { known: false, why: 'bolt not in the table', otherCodes };
  }
  if (code === 'CSA' || code === 'AS') return standardEdge(input, bolt, code, tableMm);
  return aiscEdge(input, bolt, tableMm, working);
}

function isTabled(input: Simple): boolean {
  const { bolt, edge, code } = input;
  if (code === 'EN') return true;
  return (
    bolt !== undefined &&
    ifTabled(() => leastEdgeDistanceMm({ bolt, edge, code, fit: 'standard' })) !== undefined
  );
}

/** CSA and AS: the table holds for standard holes, and what it asks of those no other hole can go under. */
function standardEdge({ hole }: Simple, bolt: BoltSize, code: 'CSA' | 'AS', tableMm: number): LeastDistance {
  const source = sources[code];
  const unknown = { known: false, failsUnderMm: tableMm, source } as const;
  if (isSlot(hole)) return { ...unknown, why: 'slot' };
  const standard = atMost(leastDimensionMm(hole), standardHoleMm({ bolt, code }));
  if (!standard) return { ...unknown, why: 'oversize hole' };
  return { known: true, leastMm: tableMm, measuredFrom: 'center', source };
}

const sources = {
  CSA: 'CSA S16, minimum edge distance (from memory)',
  AS: 'AS 4100, minimum edge distance (from memory)',
};

function aiscEdge(input: Simple, bolt: BoltSize, tableMm: number, working?: Working): LeastDistance {
  const { hole, slotDirection = 'towards edge', edge, code } = input;
  const widthMm = leastDimensionMm(hole);
  const towards = isSlot(hole) && slotDirection !== 'along edge';
  const size = towards ? { bolt, widthMm, lengthTowardsMm: hole.lengthMm } : { bolt, widthMm };
  const { incrementMm, beyondTable, source: incrementSource } = edgeIncrement(size, working);
  const leastMm = tableMm + incrementMm;
  const table = tableName(bolt, edge, code);
  const source = incrementMm === 0 ? table : `${table}; ${incrementSource}`;
  working?.step({
    title: 'Edge distance for the hole',
    formula: 'e = e0 + C2',
    values: [
      lengthValue('e0', 'least distance for a standard hole', tableMm),
      lengthValue('C2', 'increment for the hole', incrementMm),
    ],
    result: lengthValue('e', 'least distance, center to edge', leastMm),
    source,
  });
  const known = { known: true, leastMm, measuredFrom: 'center', source } as const;
  return beyondTable ? { ...known, beyondTable } : known;
}

function tableName({ system }: BoltSize, edge: EdgeKind, code: EdgeCode): string {
  const table = system === 'in' ? 'Table J3.4' : 'Table J3.4M';
  const sheared = edge === 'sheared' || edge === 'sheared connection end';
  return code === 'AISC' && sheared
    ? `AISC 360-05 ${table}, at sheared edges (withdrawn in 2010)`
    : `AISC 360-22 ${table}`;
}
