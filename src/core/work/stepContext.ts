import type { Press } from '../press/press.js';
import type { Layouts } from '../row/layout/layoutOf.js';
import type { ReadyRow } from '../row/job/readyRow.js';
import type { CheckedRow } from '../row/rowResult.js';
import type { Shop } from '../shop/readShop.js';

/** The row that steps are made for, on its press. */
export interface StepContext {
  row: ReadyRow;
  layouts: Layouts;
  result: CheckedRow;
  press: Press;
  shop: Shop;
}
