import { requirePositive, requireWithin } from '../requireRange.js';
import { forceValue, ratioValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';

/**
 * The force to strip the work off the punch on the return stroke.
 *
 * Formula: Fs = q · F
 * @param input punching force F in N; stripping share q
 * @param working collects the step when given
 * @returns force in N
 * Valid for shares from 0.05 to 0.5. Throws `invalid` outside that and for a force not above zero.
 * @example strippingForceN({ punchForceN: 200_000, strippingShare: 0.15 }) // 30 000
 * Source: common practice, no source: 10 to 20% of the punching force.
 */
export function strippingForceN(
  input: { punchForceN: number; strippingShare: number },
  working?: Working,
): number {
  const { punchForceN, strippingShare } = input;
  requirePositive('Punching force', punchForceN);
  requireWithin('Stripping share', strippingShare, 0.05, 0.5);
  const forceN = strippingShare * punchForceN;
  working?.step({
    title: 'Stripping force',
    formula: 'Fs = q · F',
    values: [
      ratioValue('q', 'stripping share of the punching force', strippingShare),
      forceValue('F', 'punching force', punchForceN),
    ],
    result: forceValue('Fs', 'stripping force', forceN),
    source: 'common practice, 10 to 20% of the punching force',
  });
  return forceN;
}
