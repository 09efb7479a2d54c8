import type { Workbook } from '../../../workbook/port.js';
import type { ShopState } from '../../shared/shopState.js';

export type ReadyShop = Extract<ShopState, { kind: 'ready' }>;

export interface ShopPartProps {
  workbook: Workbook;
  shop: ReadyShop;
}
