import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import type { LengthUnit } from '../../quantity/units.js';
import { type HoleText, readHole } from '../../tooling/readHole.js';
import type { HoleGroup } from '../job/rowJob.js';

type Finishing = NonNullable<HoleGroup['finishing']>[number];

/** A hole as its cell says it, with the work on it beyond the punch. */
export interface FinishedHole extends HoleText {
  finishing?: readonly Finishing[];
}

const finishingWord =
  /(?<![a-z])(?:and |& ?|, ?)?(?:(c'?sk|c\/sk|c'?sink|countersunk|countersink|c'?sunk|c\/sunk)|tapped|tap)(?![a-z])\.?/gi;
/** `1CSK 13/16`, `CSK1 3/16`: what is left would be read as one size. */
const betweenDigits = /\d ?['"]? ?(?:c\W?sk|tap)[a-z]*\.? ?\d|(?:sk|tap)[a-z]*\d/i;
/** `1/2-13`, `M12x1.75`, `3/8 UNC`. */
const thread = /\bm ?\d|\d ?- ?\d+ ?(?:un[cfj]?|unef)?\b(?!\/)|\bun[cf]\b|\bnpt\b/i;
const marksHole = /[ø⌀∅]|\bdia|\bhole/i;
const fixTapped: Record<LengthUnit, string> = {
  in: 'Write the hole before it is tapped, with its mark: Ø27/64 tapped.',
  mm: 'Write the hole before it is tapped, with its mark: Ø10.2 tapped.',
};

/**
 * Reads a hole with its finishing, before or behind the size: `13/16 CSK`, `tapped Ø7/16`. The size is the one of the
 * hole. A tapped size without a mark that it is the hole's is refused: it may be the thread's, whose hole is smaller.
 * Throws `invalid` for that, for a finishing without a size, and for what is no hole. Common practice, no source.
 */
export function readFinishedHole(
  value: CellValue,
  argument: string,
  unit: LengthUnit,
  isSlot: boolean = false,
): FinishedHole {
  if (typeof value !== 'string' || !/sk|sunk|sink|tap/i.test(value)) {
    return readHole(value, argument, unit, isSlot);
  }
  const finishing = new Set<Finishing>();
  const rest = value.replace(finishingWord, (_, countersunk: string | undefined) => {
    finishing.add(countersunk === undefined ? 'tap' : 'countersink');
    return ' ';
  });
  const size = rest
    .trim()
    .replace(/\s+/g, ' ')
    .replace(/^(?:and|&|,)\s*|\s*(?:and|&|,)$/gi, '');
  if (betweenDigits.test(value)) {
    refuse(argument, value, `${quoted(value)} is not one size.`, 'Write the size together, as 13/16 CSK.');
  }
  if (finishing.size > 0 && !/\d/.test(size)) {
    return refuse(argument, value, `${quoted(value)} has no size.`, 'Write the size of the hole with it.');
  }
  if (finishing.has('tap')) refuseThread(size.replace(/ ?\bdrill(?:ed)?\b ?/gi, ''), value, argument, unit);
  return {
    ...readHole(size, argument, unit, isSlot),
    ...(finishing.size > 0 ? { finishing: [...finishing].sort() } : {}),
  };
}

function refuseThread(size: string, value: string, argument: string, unit: LengthUnit): void {
  if (thread.test(size)) {
    refuse(argument, value, `${quoted(value)} is a thread, not the size of a hole.`, fixTapped[unit]);
  }
  if (marksHole.test(size)) return;
  const problem = `${quoted(value)} may be a thread of ${size} or a hole of ${size} that is tapped.`;
  refuse(argument, value, problem, fixTapped[unit]);
}
