import type { PressFinding } from '../check/finding.js';
import { governsOf } from '../press/limit.js';
import type { LengthUnit } from '../quantity/units.js';
import { describeHole } from '../tooling/hole.js';

/** What a check against a press compared, in a few words: `punch throat`, `punch force, Ø13/16`. */
export function pressGoverns(finding: PressFinding, unit: LengthUnit): string {
  switch (finding.rule) {
    case 'refusal':
      return finding.about;
    case 'station':
      return finding.needed;
    case 'press limit':
      return finding.sized.is === 'hole'
        ? `${governsOf(finding.item)}, ${describeHole(finding.sized.hole, unit)}`
        : governsOf(finding.item);
    case 'blank item':
    case 'shear minimum':
      return governsOf(finding.item);
    case 'smallest hole':
      return `smallest hole, ${describeHole(finding.hole, unit)}`;
    case 'share':
      return finding.hole ? `${finding.operation}, ${describeHole(finding.hole, unit)}` : finding.operation;
    case 'widest bar':
    case 'plate thickness':
      return `flat shear size of ${finding.press ?? 'the press'}`;
    case 'blade material':
      return governsOf('bladeMaterialLimit');
    case 'nothing stated':
      return finding.of;
    case 'miter':
      return 'miter';
    case 'vee opening':
      return governsOf('bendVeeOpenings');
    case 'leg beside punch':
      return governsOf('bendPunchHalfWidth');
    case 'narrowest notch':
    case 'notch bites':
    case 'several bites':
      return 'notch';
    case 'die holder':
      return governsOf('punchDieHalfWidth');
  }
}
