import { formatLength } from '../../quantity/formatLength.js';
import type { LengthUnit } from '../../quantity/units.js';
import type { Cause } from '../../part/outline.js';
import type { OutlineProblem } from '../../part/outlineInput.js';
import type { Need } from './holeNeeds.js';

const causes: Record<Cause['is'], string> = {
  'left end': 'the left end',
  'right end': 'the right end',
  'bottom edge': 'the bottom edge',
  'top edge': 'the top edge',
  heel: 'the heel',
  toe: 'the toe',
  'miter left': 'the miter at the left end',
  'miter right': 'the miter at the right end',
  clip: 'clipped corner',
  notch: 'notch',
};

/** An edge as a sentence names it: `the top edge`, `notch 2`. */
export function causeWords({ is, number }: Cause): string {
  return number === undefined ? causes[is] : `${causes[is]} ${number}`;
}

const starts: Record<Need['from'], string> = {
  center: 'from the center',
  'end radius': 'from the center of the end radius',
  rim: 'from the rim',
};

export function sizeWords(mm: number, unit: LengthUnit): string {
  return `${formatLength(mm, unit)} ${unit}`;
}

/** Where a distance is measured from and to, and what it must be. */
export function needWords({ from, distance, leastMm, rule }: Need, to: string, unit: LengthUnit): string {
  const size = sizeWords(Math.max(0, distance.most), unit);
  return `${size} ${starts[from]} to ${to} is under ${sizeWords(leastMm, unit)} (${rule}).`;
}

/** Why the cuts of a part do not leave one piece, with what to do. */
export function problemWords(problem: OutlineProblem, unit: LengthUnit): string {
  const { cause, otherCause, neededMm, availableMm } = problem;
  const what = cause ? causeWords(cause) : 'a cut';
  const sizes =
    neededMm === undefined || availableMm === undefined
      ? ''
      : `: ${sizeWords(neededMm, unit)} is needed, ${sizeWords(availableMm, unit)} is there`;
  switch (problem.problem) {
    case 'miters meet':
      return `the miters meet before the part has its width${sizes}. Correct Length or the miters.`;
    case 'cut too deep':
      return `${what} goes through the part${sizes}. Correct its size.`;
    case 'cut off the edge':
      return `${what} runs off its edge${sizes}. Correct its size or place.`;
    case 'cuts meet':
      return `${what} runs into ${otherCause ? causeWords(otherCause) : 'another cut'}. Correct their sizes or places.`;
    default:
      return `${what} has no size that can be cut. Correct it.`;
  }
}
