import type { LengthUnit } from '../quantity/units.js';
import type { CheckedRow } from '../row/rowResult.js';
import { sentencesOf } from './sentencesOf.js';

/** What of a row is not checked for certain, one sentence each; empty where everything is held or fails. */
export function openText({ findings }: CheckedRow, unit: LengthUnit): string {
  return sentencesOf(
    findings.filter(({ outcome }) => outcome === 'open'),
    unit,
  ).join(' ');
}
