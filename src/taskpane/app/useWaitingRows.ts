import { useEffect, useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import type { CheckedList } from '../shared/checkedLists.js';
import type { ShopState } from '../shared/shopState.js';
import { useLatest } from '../shared/useLatest.js';

/** How many rows of the checked lists wait on the first cell of the shop that cannot be read; 0 until they are checked. */
export function useWaitingRows(workbook: Workbook, shop: ShopState, lists: readonly CheckedList[]): number {
  const [waiting, setWaiting] = useState(0);
  const count = useLatest(async () => {
    const refused = shop.kind === 'ready' ? shop.problems[0]?.refused : undefined;
    if (shop.kind !== 'ready' || !refused || lists.length === 0) return 0;
    const { waitingRows } = await import(/* webpackChunkName: "waiting" */ './waitingRows.js');
    return waitingRows(workbook, shop.shop, lists, refused);
  }, setWaiting);
  useEffect(() => count(), [count, workbook, shop, lists]);
  return waiting;
}
