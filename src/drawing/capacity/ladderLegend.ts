import type { Press } from '../../core/press/press.js';
import { percent } from '../../core/say/percent.js';
import type { Shop } from '../../core/shop/readShop.js';
import { punchesOnHandMm } from './holeLadder.js';
import { greatestGoodShare } from './punchCapacity.js';
import type { SelectedHole } from './selectedHole.js';

/** What the bars, lines and marks of a hole ladder mean, in words. */
export function ladderLegend(press: Press, shop: Shop, selected?: SelectedHole): string {
  return [
    `Thick bar: up to the ${percent(greatestGoodShare(press))} of the rating that the shop uses.`,
    'Thin line: up to the rating.',
    ...(punchesOnHandMm(press, shop).length > 0
      ? ['Ticks: punches on hand, with the largest named at the right.']
      : []),
    ...(selected ? ['Diamond: the selected hole.'] : []),
  ].join(' ');
}
