import type { PressFinding } from '../check/finding.js';
import { insideRadiusOfVeeMm, veeOfInsideRadiusMm } from '../tooling/bendLimits.js';
import { leastBendRadius } from '../tooling/leastBendRadius.js';
import { lengthValue, ratioValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import type { BendJob } from './bendStation.js';
import { limitOf, pressSource, roundingShare } from './limit.js';
import { type Press, pressValue } from './press.js';

type VeeFact = Extract<PressFinding, { rule: 'vee opening' }>;
type VeeJob = Pick<BendJob, 'thicknessMm' | 'grade' | 'galvanized' | 'alongRolling' | 'veeMm' | 'veeRatio'>;

export interface BendVee {
  /** The opening the bend is made in, and the inside radius it takes there; left out where it is not on hand. */
  veeMm?: number;
  insideRadiusMm?: number;
  finding: PressFinding;
}

const sameOpeningMm = 0.5;

/**
 * The opening a bend is made in. Without one asked for, it is the smallest on hand that is as wide as the ratio asks
 * and in which the bend does not get an inside radius under the least of its grade.
 *
 * Formula: V ≥ k · t; V ≥ 6 · r0 where the least inside radius r0 is known, or at least 3 · t where it is galvanized
 * @param press the press, its limits in mm
 * @param job thickness and opening asked for in mm; grade; ratio k; whether the part is galvanized afterwards, and
 *   whether the bend runs along the rolling direction
 * @param working collects the step when given
 * @returns opening and inside radius in mm, and whether it is on hand
 * Source: common practice, no source; the least radius names its own.
 */
export function bendVee(press: Press, job: VeeJob, working?: Working): BendVee {
  const { wantedMm, leastRadiusMm, forRadius } = wanted(job);
  const asked = forRadius ? { wantedMm, forRadius } : { wantedMm };
  const exact = job.veeMm !== undefined;
  const made = (veeMm: number) => {
    veeStep(job, veeMm, leastRadiusMm, working);
    return { veeMm, insideRadiusMm: insideRadiusOfVeeMm(veeMm) };
  };
  const openings = pressValue(press, 'bendVeeOpenings');
  if (openings.state !== 'list') {
    const known = limitOf(press, 'bendVeeOpenings');
    const finding = typeof known === 'number' ? veeFinding(press, { ...asked, exact, onHandMm: [] }) : known;
    return { ...made(wantedMm), finding };
  }
  const { values } = openings;
  const fitting = exact
    ? values.find((opening) => Math.abs(opening - wantedMm) < sameOpeningMm)
    : values.find((opening) => opening >= wantedMm * (1 - roundingShare));
  const fact = { ...asked, exact, onHandMm: values };
  if (fitting !== undefined) return { ...made(fitting), finding: veeFinding(press, fact) };
  return { finding: { ...veeFinding(press, fact), outcome: 'failed', verdict: 'No tool' } };
}

function veeFinding(
  press: Press,
  fact: Pick<VeeFact, 'wantedMm' | 'exact' | 'onHandMm' | 'forRadius'>,
): PressFinding {
  return { rule: 'vee opening', outcome: 'held', verdict: 'OK', press: press.name, ...fact };
}

function wanted(job: VeeJob): Pick<VeeFact, 'wantedMm' | 'forRadius'> & { leastRadiusMm?: number } {
  if (job.veeMm !== undefined) return { wantedMm: job.veeMm };
  const byRatioMm = job.veeRatio * job.thicknessMm;
  const least = leastBendRadius(job);
  const leastRadiusMm = least.known ? least.leastMm : least.failsUnderMm;
  if (leastRadiusMm === undefined) return { wantedMm: byRatioMm };
  const byRadiusMm = veeOfInsideRadiusMm(leastRadiusMm);
  if (byRadiusMm <= byRatioMm) return { wantedMm: byRatioMm, leastRadiusMm };
  const bare = leastBendRadius({ ...job, galvanized: false });
  const galvanized = job.galvanized === true && !(bare.known && bare.leastMm >= leastRadiusMm);
  return { wantedMm: byRadiusMm, leastRadiusMm, forRadius: { leastMm: leastRadiusMm, galvanized } };
}

function veeStep(
  { veeMm, veeRatio, thicknessMm }: VeeJob,
  chosenMm: number,
  leastRadiusMm: number | undefined,
  working?: Working,
): void {
  const byRadius = leastRadiusMm === undefined ? '' : ' and V ≥ 6 · r0';
  working?.step({
    title: 'V opening',
    formula: veeMm === undefined ? `V ≥ k · t${byRadius}, of those on hand` : 'V as given',
    values: [
      ...(veeMm === undefined ? [ratioValue('k', 'V opening ratio', veeRatio)] : []),
      lengthValue('t', 'thickness', thicknessMm),
      ...(leastRadiusMm === undefined ? [] : [lengthValue('r0', 'least inside radius', leastRadiusMm)]),
    ],
    result: lengthValue('V', 'V opening', chosenMm),
    source: pressSource,
  });
}
