import type { Finding } from '../check/finding.js';
import { hardestOf, mildestOf } from '../check/severity.js';

/**
 * What a press finds of a hole group that may be in several faces: where it fails in all of them, what it finds in the
 * face with the mildest word; what fails in some is not known until the row names the leg. Of the shares the largest is kept.
 */
export function inAnyFace(found: readonly (readonly Finding[])[], group: number): Finding[] {
  const [first = []] = found;
  if (found.length === 1) return [...first];
  const failing = found.map((each) => each.filter(({ outcome }) => outcome === 'failed'));
  if (failing.every((each) => each.length > 0)) return [...(mildestOf(found) ?? [])];
  const failed = failing.find((each) => each.length > 0) ?? [];
  const choice: Finding[] =
    failed.length === 0
      ? []
      : [
          {
            rule: 'choice',
            outcome: 'open',
            verdict: 'Not checked',
            cells: [{ cell: 'Leg', group }],
            failing: failed,
          },
        ];
  const passing = found.flat().filter(({ outcome }) => outcome !== 'failed');
  const hardest = hardestOf(passing);
  const others = passing.filter(({ rule }) => rule !== 'share');
  return [...choice, ...others, ...(hardest ? [hardest] : [])];
}
