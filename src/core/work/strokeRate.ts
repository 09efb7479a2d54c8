import { inventedTimes } from '../press/inventedTimes.js';
import type { Press } from '../press/press.js';
import type { Shop } from '../shop/readShop.js';
import type { Operation } from './operations.js';
import type { Rate } from './rates.js';

/** What one stroke of an operation takes. */
export function strokeRate(_press: Press, _operation: Operation, _shop: Shop): Rate {
  return { item: inventedTimes.stroke.item, seconds: inventedTimes.stroke.value, invented: true };
}
