import { refuse } from '../inputError.js';
import { mmPer } from '../quantity/units.js';
import { requirePositive } from '../requireRange.js';
import type { NamedValue, Working } from '../working/working.js';
import { holeByCode } from './boltHole.js';
import { type BoltSize, boltRow, boltValue, isSize, ownDiameter, requireSystem } from './boltSize.js';
import {
  edgeTables,
  type EdgeTable,
  incrementInch,
  incrementMetric,
  longSlotIncrementFactor,
} from './edgeDistanceTables.js';
import { withOtherCodes } from './otherCodes.js';

/**
 * How the edge was made. Machine cut is sawn, machined or machine gas-cut. A sheared connection end is that of a beam
 * connection angle or shear end plate, where 7/8 and 1 in bolts (M22, M24) may be nearer.
 */
export const edgeKinds = ['sheared', 'machine cut', 'rolled', 'sheared connection end'] as const;
export type EdgeKind = (typeof edgeKinds)[number];

/** `AISC` takes the withdrawn, larger values of AISC 360-05 at sheared edges; `AISC 360-22` makes no difference. */
export const edgeCodes = ['AISC', 'AISC 360-22', 'EN', 'CSA', 'AS'] as const;
export type EdgeCode = (typeof edgeCodes)[number];

/** A slot lies across the edge (its length towards it) unless it says `along`. */
export const edgeFits = [
  'standard',
  'oversize',
  'short slot',
  'long slot',
  'short slot along',
  'long slot along',
] as const;
export type EdgeFit = (typeof edgeFits)[number];

export interface EdgeInput {
  bolt: BoltSize;
  edge: EdgeKind;
  code: EdgeCode;
  fit: EdgeFit;
}

/** AS 4100 clause 9.5.2 (in newer editions 9.6.2), as factors on the diameter (from memory). */
const asFactor: Record<EdgeKind, number> = {
  sheared: 1.75,
  'machine cut': 1.5,
  rolled: 1.25,
  'sheared connection end': 1.75,
};
const enRoundFactor = 1.2;
const enSlotFactor = 1.5;
const sameSize = 0.001;
const connectionEnd: EdgeKind = 'sheared connection end';

/**
 * The least distance from the center of a hole to an edge.
 *
 * Formula: AISC e = Table J3.4 + C2 of Table J3.5; EN e = 1.2 · d0, slots 1.5 · d0; CSA by table; AS e = factor · d
 * @param input the bolt; how the edge was made; the code; the fit of the hole
 * @param working collects the steps when given
 * @returns distance in mm, center to edge
 * Valid for the sizes of the tables. Throws `unknown` for a size a table does not have, with the codes that have it,
 * `invalid` for an oversize or slotted hole under CSA and AS, whose rules for them are not built in.
 * @example leastEdgeDistanceMm({ bolt: readBolt('3/4', 'Bolt', 'in'), edge: 'sheared', code: 'AISC', fit: 'standard' }) // 31.75
 * Source: AISC 360-22 Tables J3.4, J3.4M, J3.5, J3.5M; AISC 360-05 Tables J3.4, J3.4M at sheared edges; EN 1993-1-8
 *   Table 3.3; CSA S16 and AS 4100 (from memory).
 */
export function leastEdgeDistanceMm(input: EdgeInput, working?: Working): number {
  requirePositive('Bolt', input.bolt.diameterMm);
  return withOtherCodes(input.code, edgeCodes, (code) =>
    edgeByCode({ ...input, code }, code === input.code ? working : undefined),
  );
}

function edgeByCode(input: EdgeInput, working?: Working): number {
  switch (input.code) {
    case 'EN':
      return enEdge(input, working);
    case 'CSA':
      return csaEdge(input, working);
    case 'AS':
      return asEdge(input, working);
    default:
      return aiscEdge(input, working);
  }
}

function aiscEdge({ bolt, edge, code, fit }: EdgeInput, working?: Working): number {
  const inch = bolt.system === 'in';
  const withdrawn = code === 'AISC' && isSheared(edge);
  const table = withdrawn
    ? edgeTables[inch ? 'shearedInch' : 'shearedMetric']
    : edgeTables[inch ? 'aiscInch' : 'aiscMetric'];
  const tableMm = tableEdgeMm(bolt, edge, table, working);
  if (fit === 'standard') return tableMm;
  const incrementMm = incrementIn(bolt, fit) * mmPer[bolt.system];
  const leastMm = tableMm + incrementMm;
  working?.step({
    title: 'Edge distance for the fit',
    formula: 'e = e0 + C2',
    values: [
      { symbol: 'e0', meaning: 'least distance for a standard hole', kind: 'length', value: tableMm },
      { symbol: 'C2', meaning: `increment for the fit: ${fit}`, kind: 'length', value: incrementMm },
    ],
    result: edgeResult(leastMm),
    source: (inch ? incrementInch : incrementMetric).source,
  });
  return leastMm;
}

function tableEdgeMm(bolt: BoltSize, edge: EdgeKind, table: EdgeTable, working?: Working): number {
  const nearer = table.connectionEnd?.diameters.some((diameter) => isSize(bolt, diameter));
  const end = nearer ? table.connectionEnd : undefined;
  if (end && edge === connectionEnd)
    return connectionEndMm(bolt, end.edge * mmPer[bolt.system], table, working);
  const d = ownDiameter(bolt);
  const last = table.rows.at(-1)?.diameter ?? 0;
  const above = d > last + sameSize;
  const own = above ? table.aboveFactor * d : boltRow(bolt, table.rows, table.source, ' and above').edge;
  const leastMm = own * mmPer[bolt.system];
  working?.step({
    title: 'Least edge distance',
    formula: above ? `e = ${table.aboveFactor} · d` : 'e by table',
    values: [boltValue(bolt), { symbol: '', meaning: 'edge', kind: 'text', value: edge }],
    result: edgeResult(leastMm),
    source: table.source,
    ...(end ? { cautions: [end.note] } : {}),
  });
  return leastMm;
}

function connectionEndMm(bolt: BoltSize, leastMm: number, table: EdgeTable, working?: Working): number {
  working?.step({
    title: 'Least edge distance',
    formula: 'e of the exception below the table',
    values: [boltValue(bolt), { symbol: '', meaning: 'edge', kind: 'text', value: connectionEnd }],
    result: edgeResult(leastMm),
    source: table.source,
    cautions: ['Only at the ends of beam connection angles and shear end plates.'],
  });
  return leastMm;
}

function isSheared(edge: EdgeKind): boolean {
  return edge === 'sheared' || edge === connectionEnd;
}

/** C2 of AISC Table J3.5 in the bolt's own unit. */
function incrementIn(bolt: BoltSize, fit: EdgeFit): number {
  const d = ownDiameter(bolt);
  if (fit === 'long slot') return longSlotIncrementFactor * d;
  if (fit !== 'oversize' && fit !== 'short slot') return 0;
  const { rows } = bolt.system === 'in' ? incrementInch : incrementMetric;
  const row = rows.find((each) => d <= each.upToDiameter + sameSize);
  return (fit === 'oversize' ? row?.oversize : row?.shortSlot) ?? 0;
}

function enEdge({ bolt, fit }: EdgeInput, working?: Working): number {
  const round = fit === 'standard' || fit === 'oversize';
  const { widthMm } = holeByCode({ bolt, fit: round ? fit : 'standard', code: 'EN' }, working);
  const factor = round ? enRoundFactor : enSlotFactor;
  const leastMm = factor * widthMm;
  working?.step({
    title: 'Least edge distance',
    formula: `e = ${factor} · d0`,
    values: [{ symbol: 'd0', meaning: 'hole', kind: 'length', value: widthMm }],
    result: edgeResult(leastMm),
    source: `EN 1993-1-8 Table 3.3, ${round ? 'e1 and e2' : 'slotted holes e3 and e4'}: the same for every edge`,
  });
  return leastMm;
}

function csaEdge({ bolt, edge, fit }: EdgeInput, working?: Working): number {
  requireStandard('CSA S16', fit);
  const table = isSheared(edge) ? edgeTables.csaSheared : edgeTables.csaRolled;
  requireSystem(bolt, 'mm', table.source);
  return tableEdgeMm(bolt, edge, table, working);
}

function asEdge({ bolt, edge, fit }: EdgeInput, working?: Working): number {
  requireStandard('AS 4100', fit);
  const leastMm = asFactor[edge] * bolt.diameterMm;
  working?.step({
    title: 'Least edge distance',
    formula: `e = ${asFactor[edge]} · d`,
    values: [boltValue(bolt), { symbol: '', meaning: 'edge', kind: 'text', value: edge }],
    result: edgeResult(leastMm),
    source: 'AS 4100, minimum edge distance (from memory)',
  });
  return leastMm;
}

function requireStandard(code: string, fit: EdgeFit): void {
  if (fit === 'standard') return;
  const problem = `the rule of ${code} for a hole of the fit '${fit}' is not built in.`;
  refuse('Fit', fit, problem, 'Use the fit standard, or ask the engineer.');
}

function edgeResult(value: number): NamedValue {
  return { symbol: 'e', meaning: 'least distance, center to edge', kind: 'length', value };
}
