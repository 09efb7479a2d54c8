import type { AnySection } from '../../section/section.js';
import type { HoleCount } from './readHoleCount.js';

/** How many spaces a line of a hole group may have. */
export interface HoleLines {
  fits: (spaces: number) => boolean;
  /** The number of holes as the row gives it, and what to do about it. */
  said: string;
  fix: string;
}

/** Of a group whose number of holes cannot be read. */
export const anyLine: HoleLines = { fits: () => true, said: '', fix: '' };

/**
 * The holes in a line of a group: all of them, half where they are at both ends, and half again where a gage makes two
 * lines, in a plate or web. In a channel without a face a gage may stand in the web or in a flange: both fit.
 * Undefined count: the row gives none, and no chain fits.
 */
export function holeLines(
  holes: HoleCount | undefined,
  gage: boolean,
  section: AnySection | undefined,
  leg: string | undefined,
): HoleLines {
  if (!holes) return { fits: () => false, said: 'the number of holes is blank', fix: 'Fill it in.' };
  const { count, eachEnd } = holes;
  const atOnce = eachEnd ? count / 2 : count;
  const lines = gage ? linesWithGage(section, leg) : [1];
  const ends = eachEnd ? ' at each end' : '';
  const inLines = lines.length === 1 && lines[0] === 2 ? ', in two lines' : '';
  return {
    fits: (spaces) => lines.some((each) => Math.ceil(atOnce / each) === spaces + 1),
    said: `the row says ${atOnce}${ends}${inLines}`,
    fix: 'Make them agree.',
  };
}

function linesWithGage(section: AnySection | undefined, leg: string | undefined): readonly number[] {
  if (section?.kind === 'flat') return [2];
  if (section?.kind === 'angle') return [1];
  if (section?.kind === 'channel' && leg !== undefined) return [leg.toLowerCase() === 'web' ? 2 : 1];
  return [1, 2];
}
