import type { Finding } from '../check/finding.js';
import type { OpenCell } from '../check/rowFact.js';
import { hardestOf, mildestOf } from '../check/severity.js';

/**
 * What a press finds of work that may be in several places: where it fails in all of them, what it finds in the one with
 * the mildest word; what fails in some is not known until the row fills in the cell. Of the shares the largest is kept.
 */
export function inAnyPlace(found: readonly (readonly Finding[])[], cell: OpenCell): Finding[] {
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
            cells: [cell],
            failing: failed,
          },
        ];
  const passing = found.flat().filter(({ outcome }) => outcome !== 'failed');
  const hardest = hardestOf(passing);
  const others = passing.filter(({ rule }) => rule !== 'share');
  return [...choice, ...others, ...(hardest ? [hardest] : [])];
}
