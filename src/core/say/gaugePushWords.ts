import type { LengthUnit } from '../quantity/units.js';
import type { GaugePush } from '../stock/list/jobPlan.js';
import { size } from './sizes.js';

/** What the back gauge is set to for a piece of a bar, or what leaves it open. */
export function gaugePushWords(push: GaugePush, unit: LengthUnit): string {
  if ('none' in push) return 'not sheared';
  if ('open' in push) return push.open === 'how it lies' ? 'not known how it lies' : `${push.open} is blank`;
  if (push.reach === 'over') return 'over its reach: mark out';
  const setting = size(push.mm, unit);
  return push.reach === 'unknown' ? `${setting}, reach not known` : setting;
}
