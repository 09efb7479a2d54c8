import { type ComponentType, lazy, type LazyExoticComponent } from 'react';
import type { Workbook } from '../../workbook/port.js';
import type { PlaceKey } from '../shared/navigation.js';
import type { ShopState } from '../shared/shopState.js';

export interface PlaceProps {
  workbook: Workbook;
  shop: ShopState;
}

interface Place {
  key: PlaceKey;
  title: string;
  Component: LazyExoticComponent<ComponentType<PlaceProps>>;
}

/** The places of the pane; each is loaded when it is first opened. */
export const places: readonly Place[] = [
  {
    key: 'shop',
    title: 'Shop',
    Component: lazy(() => import(/* webpackChunkName: "shop" */ '../shop/index.js')),
  },
  {
    key: 'parts',
    title: 'Parts',
    Component: lazy(() => import(/* webpackChunkName: "parts" */ '../parts/index.js')),
  },
  {
    key: 'stock',
    title: 'Stock',
    Component: lazy(() => import(/* webpackChunkName: "stock" */ '../stock/index.js')),
  },
  {
    key: 'steps',
    title: 'Steps',
    Component: lazy(() => import(/* webpackChunkName: "steps" */ '../steps/index.js')),
  },
  {
    key: 'handOff',
    title: 'Hand-off',
    Component: lazy(() => import(/* webpackChunkName: "hand-off" */ '../handOff/index.js')),
  },
];
