import { requirePositive } from '../requireRange.js';
import type { BoltSize } from './boltSize.js';

const rules = {
  /** CSA S16, bolt holes (from memory): 2 mm to M22, 3 mm from M24. */
  CSA: { narrowMm: 2, wideMm: 3, wideFromMm: 24 },
  /** AS 4100, 14.3.5 (from memory): 2 mm to M24, 3 mm above. */
  AS: { narrowMm: 2, wideMm: 3, wideFromMm: 25 },
} as const;
const sameSizeMm = 0.02;

/**
 * The standard hole for a bolt under CSA S16 or AS 4100: a larger one is oversize there.
 *
 * Formula: dh = d + 2 mm; CSA from M24 and AS above M24 d + 3 mm
 * @param input the bolt; the code
 * @returns diameter in mm
 * Valid for every bolt size; inch bolts by the same additions. Throws `invalid` for a diameter not above zero.
 * @example standardHoleMm({ bolt: readBolt('M20', 'Bolt', 'mm'), code: 'AS' }) // 22
 * Source: CSA S16, bolt holes; AS 4100, 14.3.5 (both from memory).
 */
export function standardHoleMm(input: { bolt: BoltSize; code: 'CSA' | 'AS' }): number {
  const { diameterMm } = input.bolt;
  requirePositive('Bolt', diameterMm);
  const { narrowMm, wideMm, wideFromMm } = rules[input.code];
  return diameterMm + (diameterMm >= wideFromMm - sameSizeMm ? wideMm : narrowMm);
}
