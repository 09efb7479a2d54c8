import type { CellValue } from '../../quantity/cellValue.js';
import type { LengthUnit } from '../../quantity/units.js';
import { type HoleText, readHole } from '../../tooling/readHole.js';
import type { HoleGroup } from '../rowJob.js';

type Finishing = NonNullable<HoleGroup['finishing']>[number];

/** A hole as its cell says it, with the work on it beyond the punch. */
export interface FinishedHole extends HoleText {
  finishing?: readonly Finishing[];
}

const finishingWord =
  /(?<![a-z])(?:and |& ?|, ?)?(?:(c'?sk|c\/sk|countersunk|countersink|c'?sunk|c\/sunk)|tapped|tap)(?![a-z])\.?/gi;

/** Reads a hole with its finishing, before or behind the size: `13/16 CSK`, `tapped 7/16`. The size is the one written. */
export function readFinishedHole(value: CellValue, argument: string, unit: LengthUnit): FinishedHole {
  if (typeof value !== 'string' || !/sk|sunk|sink|tap/i.test(value)) return readHole(value, argument, unit);
  const finishing = new Set<Finishing>();
  const rest = value.replace(finishingWord, (_, countersunk: string | undefined) => {
    finishing.add(countersunk === undefined ? 'tap' : 'countersink');
    return ' ';
  });
  const size = rest.trim().replace(/^(?:and|&|,)\s*|\s*(?:and|&|,)$/gi, '');
  return {
    ...readHole(size, argument, unit),
    ...(finishing.size > 0 ? { finishing: [...finishing].sort() } : {}),
  };
}
