import { useEffect, useState } from 'react';
import { overlap } from '../../workbook/area.js';
import type { Change } from '../../workbook/change.js';
import type { Workbook } from '../../workbook/port.js';
import { type CheckedList, readCheckedLists } from './checkedLists.js';
import { useLatest } from './useLatest.js';
import { useWatch } from './useShop.js';

/** The checked lists of the workbook, read again when their cells change or are calculated; undefined until then. */
export function useCheckedLists(workbook: Workbook): readonly CheckedList[] | undefined {
  const [lists, setLists] = useState<readonly CheckedList[]>();
  const read = useLatest(() => readCheckedLists(workbook), setLists);
  useEffect(() => read(), [read, workbook]);
  useWatch(workbook, (change) => {
    if (concerns(change, lists ?? [])) read();
  });
  return lists;
}

function concerns(change: Change, lists: readonly CheckedList[]): boolean {
  if (change.kind === 'selected') return false;
  if (change.kind === 'calculated')
    return change.areas.some((area) => lists.some((list) => overlap(list.area, area)));
  return true;
}
