import { requirePositive } from '../requireRange.js';
import type { Working } from '../working/working.js';
import { holeByCode } from './boltHole.js';
import { type BoltSize, boltValue } from './boltSize.js';
import { type EdgeCode, edgeCodes } from './edgeDistance.js';
import { withOtherCodes } from './otherCodes.js';

const aisc = {
  factor: 8 / 3,
  formula: 'p = 2⅔ · d',
  source: 'AISC 360-22 J3.4, until 2016 J3.3 (checked against a reprint)',
  cautions: ['3 d is preferred.'],
};
const byBolt: Record<
  Exclude<EdgeCode, 'EN'>,
  { factor: number; formula: string; source: string; cautions?: string[] }
> = {
  AISC: aisc,
  'AISC 360-22': aisc,
  CSA: { factor: 2.7, formula: 'p = 2.7 · d', source: 'CSA S16, minimum pitch (from memory)' },
  AS: { factor: 2.5, formula: 'p = 2.5 · d', source: 'AS 4100, minimum pitch (from memory)' },
};
const enFactor = 2.2;

/**
 * The least distance between the centers of two holes in a line of bolts.
 *
 * Formula: AISC 2⅔ · d; EN 2.2 · d0 with the normal hole d0; CSA 2.7 · d; AS 2.5 · d
 * @param input the bolt; the code
 * @param working collects the steps when given
 * @returns distance in mm, center to center
 * Valid for every bolt size; EN for the sizes of its hole table, throws `unknown` for others, with the codes that
 * have them.
 * @example leastPitchMm({ bolt: readBolt('M20', 'Bolt', 'mm'), code: 'EN' }) // 48.4
 * Source: AISC 360-22 J3.4 (until 2016 J3.3); EN 1993-1-8 Table 3.3; CSA S16 and AS 4100 (from memory).
 */
export function leastPitchMm(input: { bolt: BoltSize; code: EdgeCode }, working?: Working): number {
  requirePositive('Bolt', input.bolt.diameterMm);
  return withOtherCodes(input.code, edgeCodes, (code) =>
    pitchByCode(input.bolt, code, code === input.code ? working : undefined),
  );
}

function pitchByCode(bolt: BoltSize, code: EdgeCode, working?: Working): number {
  if (code === 'EN') return enPitch(bolt, working);
  const { factor, formula, source, cautions } = byBolt[code];
  const leastMm = factor * bolt.diameterMm;
  working?.step({
    title: 'Least pitch',
    formula,
    values: [boltValue(bolt)],
    result: { symbol: 'p', meaning: 'least pitch, center to center', kind: 'length', value: leastMm },
    source,
    ...(cautions ? { cautions } : {}),
  });
  return leastMm;
}

function enPitch(bolt: BoltSize, working?: Working): number {
  const { widthMm } = holeByCode({ bolt, fit: 'standard', code: 'EN' }, working);
  const leastMm = enFactor * widthMm;
  working?.step({
    title: 'Least pitch',
    formula: 'p = 2.2 · d0',
    values: [{ symbol: 'd0', meaning: 'hole', kind: 'length', value: widthMm }],
    result: { symbol: 'p', meaning: 'least pitch, center to center', kind: 'length', value: leastMm },
    source: 'EN 1993-1-8 Table 3.3, p1',
  });
  return leastMm;
}
