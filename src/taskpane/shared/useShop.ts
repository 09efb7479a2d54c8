import { useEffect, useState } from 'react';
import { overlap } from '../../workbook/area.js';
import type { Change } from '../../workbook/change.js';
import type { Workbook } from '../../workbook/port.js';
import { isSameReading, type ShopState } from './shopState.js';
import { useLatest } from './useLatest.js';

/** The shop of the workbook, read again whenever its cells change; it stays the same shop where they say the same. */
export function useShop(workbook: Workbook): ShopState {
  const [state, setState] = useState<ShopState>({ kind: 'loading' });
  const read = useLatest(
    async () => {
      const { readShopState } = await import(/* webpackChunkName: "read-shop" */ './readShopState.js');
      return readShopState(workbook);
    },
    (now) => setState((before) => (isSameReading(before, now) ? before : now)),
  );
  useEffect(() => void read(), [read, workbook]);
  useWatch(workbook, (change) => {
    if (concerns(change, state)) read();
  });
  return state;
}

function concerns(change: Change, state: ShopState): boolean {
  if (change.kind === 'selected' || change.kind === 'shown') return false;
  if (state.kind !== 'ready' || change.kind === 'sheets' || change.kind === 'moved') return true;
  const ours = [state.stampArea, ...Object.values(state.tables).map(({ area }) => area)];
  return change.areas.some((area) => ours.some((each) => overlap(area, each)));
}

/** Tells of changes while the component is shown. */
export function useWatch(workbook: Workbook, listener: (change: Change) => void): void {
  const [latest] = useState({ listener });
  latest.listener = listener;
  const [failure, setFailure] = useState<{ error: unknown }>();
  useEffect(() => {
    const stopping = workbook.watch((change) => latest.listener(change));
    stopping.catch((error: unknown) => setFailure({ error }));
    return () => void stopping.then((stop) => stop()).catch(() => undefined);
  }, [workbook, latest]);
  if (failure) throw failure.error;
}
