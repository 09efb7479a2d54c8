import { inventedTimes } from '../press/item/inventedTimes.js';
import type { Press } from '../press/press.js';
import type { Shop } from '../shop/readShop.js';
import type { StrokeOperation } from '../stroke/strokeJob.js';
import { strokeTime } from '../stroke/strokeTime.js';
import type { Operation } from './operations.js';
import type { Rate } from './rates.js';

/** What one stroke of an operation takes: by the speeds of the press, invented where it does not give them. */
export function strokeRate(press: Press, operation: Operation, shop: Shop): Rate {
  const { item, value } = inventedTimes.stroke;
  if (operation.is === 'elsewhere') return { item, seconds: 0, invented: false };
  const time = strokeTime(
    press,
    { operation: strokeOf(operation), thicknessMm: operation.thicknessMm },
    shop,
  );
  return time.is === 'timed'
    ? { item, seconds: time.seconds, invented: false }
    : { item, seconds: value, invented: true };
}

function strokeOf(operation: Exclude<Operation, { is: 'elsewhere' }>): StrokeOperation {
  if (operation.is === 'cut') return operation.station;
  return operation.is === 'clip' ? 'notch' : operation.is;
}
