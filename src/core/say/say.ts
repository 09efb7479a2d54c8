import type { Finding } from '../check/finding.js';
import type { LengthUnit } from '../quantity/units.js';
import { isPressFinding } from './isPressFinding.js';
import { pressGoverns } from './pressGoverns.js';
import { pressSentence } from './pressSentence.js';
import { rowGoverns } from './rowGoverns.js';
import { rowSentence } from './rowSentence.js';

/** What a finding says, in one sentence; empty for what is held and not near a limit. */
export function say(finding: Finding, unit: LengthUnit): string {
  if (isPressFinding(finding)) return pressSentence(finding, unit);
  return rowSentence(finding, unit, (each) => say(each, unit));
}

/** What was compared, in a few words: `punch force`, `end distance`. */
export function governs(finding: Finding, unit: LengthUnit): string {
  return isPressFinding(finding) ? pressGoverns(finding, unit) : rowGoverns(finding);
}
