import type { Grade } from '../material/grade.js';
import { requirePositive } from '../requireRange.js';
import { textValue } from '../working/namedValue.js';
import type { Working } from '../working/working.js';
import { rulingOf } from './jobSpecRuling.js';

/** What a job's specification can be, as the setting `Job spec` names it. The names are part of the file format. */
export const jobSpecs = [
  'none',
  'EN 1090-2 EXC1',
  'EN 1090-2 EXC2',
  'EN 1090-2 EXC3',
  'EN 1090-2 EXC4',
  'AISC older rule',
  'CSA S16',
  'AS 4100',
  'AASHTO',
  'seismic or fatigue',
  'galvanized',
] as const;
export type JobSpec = (typeof jobSpecs)[number];

export type PunchedHole =
  | { allowed: true }
  | { allowed: false; reason: string; instead: 'drill' | 'punch 2 mm under and ream' };

export interface PunchedHoleInput {
  spec: JobSpec;
  /** Diameter, slot width, shorter side. */
  leastHoleMm: number;
  thicknessMm: number;
  grade: Grade;
  /** Where it is not known, the hole less 1/16 in stands for it. */
  boltMm?: number;
}

/**
 * Whether the job's specification allows a hole to be punched to full size.
 *
 * Formula: EN 1090-2 t ≤ d, EXC3 and EXC4 over 3 mm reamed; AISC older rule t ≤ bolt + 1/8 in; CSA S16
 * t ≤ bolt + 4 mm; AS 4100 fy ≤ 360 MPa and t ≤ 5600 / fy; AASHTO t ≤ 3/4, 5/8 or 1/2 in by steel; galvanized
 * t < 3/4 in; seismic or fatigue never
 * @param input the specification; least dimension of the hole, thickness and bolt in mm; the grade
 * @param working collects the step when given
 * @returns allowed, or the reason and what to do instead
 * Valid for sizes above zero; throws `invalid` otherwise. A grade whose yield strength is not known is not allowed
 * where the rule needs it.
 * @example punchedHoleAllowed({ spec: 'EN 1090-2 EXC2', leastHoleMm: 18, thicknessMm: 20, grade }).allowed // false
 * Source: EN 1090-2, 6.6.3; AISC 360, older editions; CSA S16; AS 4100, 14.3.5; AASHTO bridge construction
 *   specifications (all from memory); the rest: common practice, ask the engineer.
 */
export function punchedHoleAllowed(input: PunchedHoleInput, working?: Working): PunchedHole {
  requirePositive('Hole', input.leastHoleMm);
  requirePositive('Thickness', input.thicknessMm);
  if (input.boltMm !== undefined) requirePositive('Bolt', input.boltMm);
  const { reason, instead = 'drill', formula, values, source } = rulingOf(input);
  working?.step({
    title: `Punched hole by the job's specification: ${input.spec}`,
    formula,
    values,
    result: textValue('', 'what the specification allows', reason === undefined ? 'punch' : instead),
    source,
    ...(reason === undefined ? {} : { cautions: [`${reason}.`] }),
  });
  return reason === undefined ? { allowed: true } : { allowed: false, reason, instead };
}
