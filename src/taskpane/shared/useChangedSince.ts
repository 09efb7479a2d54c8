import { useEffect, useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { useWatch } from './useShop.js';

/** Whether the workbook was changed since an answer was made from it. */
export function useChangedSince(workbook: Workbook, answer: unknown): boolean {
  const [changed, setChanged] = useState(false);
  useEffect(() => setChanged(false), [answer]);
  useWatch(workbook, ({ kind }) => {
    if (kind !== 'selected') setChanged(true);
  });
  return changed;
}
