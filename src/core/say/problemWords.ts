import type { OutlineProblem } from '../part/outlineInput.js';
import type { LengthUnit } from '../quantity/units.js';
import { edgeWords } from './edgeWords.js';
import { size } from './sizes.js';

/** Why the cuts of a part do not leave one piece, with what to do. */
export function problemWords(problem: OutlineProblem, unit: LengthUnit): string {
  const { cause, otherCause, neededMm, availableMm } = problem;
  const what = cause ? edgeWords(cause) : 'a cut';
  const sizes =
    neededMm === undefined || availableMm === undefined
      ? ''
      : `: ${size(neededMm, unit)} is needed, ${size(availableMm, unit)} is there`;
  switch (problem.problem) {
    case 'miters meet':
      return `the miters meet before the part has its width${sizes}. Correct Length or the miters.`;
    case 'cut too deep':
      return `${what} goes through the part${sizes}. Correct its size.`;
    case 'cut off the edge':
      return `${what} runs off its edge${sizes}. Correct its size or place.`;
    case 'cuts meet':
      return `${what} runs into ${otherCause ? edgeWords(otherCause) : 'another cut'}. Correct their sizes or places.`;
    case 'no size':
      return `${what} has no size that can be cut. Correct it.`;
  }
}
