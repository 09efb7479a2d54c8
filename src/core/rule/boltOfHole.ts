import type { LengthUnit } from '../quantity/units.js';
import { boltHole } from './boltHole.js';
import { type BoltSize, readBolt } from './boltSize.js';

/** The common bolts of each table: that of AISC has no M12, that of EN no inch bolts. */
const commonBolts: Record<'AISC' | 'EN', Record<LengthUnit, readonly string[]>> = {
  AISC: {
    in: ['1/2', '5/8', '3/4', '7/8', '1'],
    mm: ['M16', 'M20', 'M22', 'M24', 'M27', 'M30', 'M36'],
  },
  EN: { in: [], mm: ['M12', 'M16', 'M20', 'M22', 'M24', 'M27', 'M30', 'M36'] },
};
const toleranceMm = 0.1;

/**
 * The bolt whose standard hole this diameter is; undefined where it is no bolt's standard hole.
 * @param input.diameterMm hole diameter in mm
 * Source: the standard holes of AISC 360 Table J3.3 and EN 1090-2 Table 11, read backwards.
 */
export function boltOfHole(input: {
  diameterMm: number;
  unit: LengthUnit;
  code: 'AISC' | 'EN';
}): BoltSize | undefined {
  const bolts = commonBolts[input.code][input.unit].map((name) => readBolt(name, 'Bolt', input.unit));
  return bolts.find((bolt) => {
    const { widthMm } = boltHole({ bolt, fit: 'standard', code: input.code });
    return Math.abs(widthMm - input.diameterMm) < toleranceMm;
  });
}
