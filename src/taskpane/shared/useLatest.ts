import { WorkbookError } from '../../workbook/workbookError.js';
import { useCallback, useEffect, useRef, useState } from 'react';

const pauseMs = 120;
const busyMs = 1500;

/**
 * Runs an asynchronous reading, soon after it was asked for and once for several askings, and hands on the
 * answer of the newest only. What the reading throws is thrown while rendering, where the boundary shows it.
 */
export function useLatest<Answer>(read: () => Promise<Answer>, answer: (value: Answer) => void): () => void {
  const [failure, setFailure] = useState<{ error: unknown }>();
  const current = useRef({
    read,
    answer,
    asked: 0,
    timer: undefined as ReturnType<typeof setTimeout> | undefined,
  });
  current.current.read = read;
  current.current.answer = answer;
  useEffect(() => {
    const held = current.current;
    return () => {
      held.asked += 1;
      clearTimeout(held.timer);
    };
  }, []);
  const again = useRef<() => void>(() => undefined);
  const ask = useCallback(() => {
    const held = current.current;
    const mine = (held.asked += 1);
    clearTimeout(held.timer);
    held.timer = setTimeout(() => {
      held.read().then(
        (value) => mine === held.asked && held.answer(value),
        (error: unknown) => {
          if (mine !== held.asked) return;
          // While somebody types in a cell the host answers nothing; it does soon after.
          if (error instanceof WorkbookError && error.trouble === 'busy')
            held.timer = setTimeout(again.current, busyMs);
          else setFailure({ error });
        },
      );
    }, pauseMs);
  }, []);
  again.current = ask;
  if (failure) throw failure.error;
  return ask;
}
