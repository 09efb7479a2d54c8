import type { Press } from '../../core/press/press.js';
import { percent } from '../../core/say/percent.js';
import { greatestGoodShare } from './punchCapacity.js';
import type { SelectedHole } from './selectedHole.js';

interface Told {
  press: Press;
  /** On hand. */
  punches: readonly number[];
  selected?: SelectedHole | undefined;
}

/** What the bars, lines and marks of a hole ladder mean, in words. */
export function ladderLegend({ press, punches, selected }: Told): string {
  return [
    `Thick bar: up to the ${percent(greatestGoodShare(press))} of the rating that the shop uses.`,
    'Thin line: up to the rating.',
    ...(punches.length > 0 ? ['Ticks: punches on hand, with the largest named at the right.'] : []),
    ...(selected ? ['Diamond: the selected hole.'] : []),
  ].join(' ');
}
