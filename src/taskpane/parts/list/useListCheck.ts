import { useEffect, useRef, useState } from 'react';
import type { RowResult } from '../../../core/row/rowResult.js';
import type { Shop } from '../../../core/shop/readShop.js';
import { checkRows } from './checkRows.js';
import type { ListRead } from './listRead.js';

export type ListCheck =
  | { at: 'idle' }
  | { at: 'checking'; done: number; total: number }
  | { at: 'stopped'; done: number; total: number }
  | { at: 'done'; results: readonly RowResult[]; list: ListRead };

/**
 * Checks a list in the pane; nothing is written. Once it was asked for, it follows every change of the list,
 * its headings and the shop.
 */
export function useListCheck(
  list: ListRead | undefined,
  headings: readonly string[] | undefined,
  shop: Shop,
  wanted: boolean,
) {
  const [check, setCheck] = useState<ListCheck>({ at: 'idle' });
  const [asked, setAsked] = useState(0);
  const aborter = useRef<AbortController>(undefined);
  const headingsKey = headings && JSON.stringify(headings);
  const active = asked > 0 || wanted;
  useEffect(() => {
    if (!active || !list || headingsKey === undefined) return undefined;
    const own = new AbortController();
    aborter.current = own;
    const total = list.rows.length;
    let done = 0;
    const progress = (now: number) => {
      done = now;
      // A check that follows a change keeps the old answer on the screen until it has the new one.
      setCheck((before) => (before.at === 'done' ? before : { at: 'checking', done: now, total }));
    };
    void checkRows(JSON.parse(headingsKey) as string[], list.rows, shop, {
      signal: own.signal,
      progress,
    }).then((results) => {
      if (results && !own.signal.aborted) setCheck({ at: 'done', results, list });
      else if (aborter.current === own) setCheck({ at: 'stopped', done, total });
    });
    return () => {
      aborter.current = undefined;
      own.abort();
    };
  }, [active, asked, list, headingsKey, shop]);
  const start = () => {
    setCheck({ at: 'idle' });
    setAsked(asked + 1);
  };
  const stop = () => aborter.current?.abort();
  return { check, start, stop };
}
