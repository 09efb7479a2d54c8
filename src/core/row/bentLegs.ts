import type { Finding } from '../check/finding.js';
import { type LegBesidePunch, legBesidePunch } from '../part/legBesidePunch.js';
import { toleranceMm } from '../part/tolerance.js';
import { limitOf, limitStep, roundingShare } from '../press/limit.js';
import type { Press } from '../press/press.js';
import type { Working } from '../working/working.js';
import type { Layout } from './layout/layoutOf.js';

/**
 * Whether the legs of parallel bends have room beside the punch, whichever way they are bent. A row does not say that: legs
 * that would meet the punch if they were bent toward each other are open. Source: geometry, for bends of 90°.
 */
export function bentLegs(
  press: Press,
  { faces, bends, lengthMm, endless }: Layout,
  working?: Working,
): Finding[] {
  const [face] = faces;
  if (!face) return [];
  return (['across', 'along'] as const).flatMap((runs): Finding[] => {
    if (endless && runs === 'across') return [];
    const own = bends.flatMap((bend, index) => (bend.runs === runs ? [{ ...bend, index }] : []));
    const places = own.map(({ atMm }) => atMm);
    const leg = legBesidePunch(places, 0, runs === 'across' ? lengthMm : face.widthMm);
    if (!leg) return [];
    const [bend, madeBefore] = [own[leg.bend]?.index ?? 0, own[leg.madeBefore]?.index ?? 0];
    const finding = legFinding(press, { ...leg, bend, madeBefore });
    const gap = {
      kind: 'length',
      value: leg.gapMm,
      meaning: 'from the leg to the middle of the punch',
    } as const;
    limitStep(working, press, 'bendPunchHalfWidth', gap, '≥', finding.verdict);
    return [finding];
  });
}

function legFinding(press: Press, leg: LegBesidePunch): Finding {
  const half = limitOf(press, 'bendPunchHalfWidth');
  // What is longer than the web meets any punch.
  if (typeof half !== 'number' && leg.gapMm >= -toleranceMm) return half;
  const halfMm = typeof half === 'number' ? half : 0;
  const held = leg.gapMm >= halfMm * (1 - roundingShare) || halfMm === Infinity;
  const fact = { rule: 'leg beside punch', press: press.name, ...leg } as const;
  const limit = Number.isFinite(halfMm) && halfMm > 0 ? { halfMm } : {};
  return held
    ? { ...fact, ...limit, outcome: 'held', verdict: 'OK' }
    : { ...fact, ...limit, outcome: 'open', verdict: 'Not checked' };
}
