import type { Finding, PressFinding } from '../check/finding.js';

const rules = {
  refusal: true,
  station: true,
  'press limit': true,
  'blank item': true,
  'shear minimum': true,
  'smallest hole': true,
  share: true,
  'blade material': true,
  'widest bar': true,
  'plate thickness': true,
  'nothing stated': true,
  miter: true,
  'vee opening': true,
  'leg beside punch': true,
  'narrowest notch': true,
  'notch bites': true,
  'several bites': true,
  'die holder': true,
} satisfies Record<PressFinding['rule'], true>;

/** Whether a finding is of a check against a press, or a refusal. */
export function isPressFinding(finding: Finding): finding is PressFinding {
  return finding.rule in rules;
}
