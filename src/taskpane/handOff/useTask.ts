import { useCallback, useEffect, useRef, useState } from 'react';
import type { LongWork } from '../../workbook/longWork.js';
import { WorkbookError } from '../../workbook/workbookError.js';

/** Work that takes a while: how far it is, what came of it, why it failed. */
export type Task<Answer> =
  | { at: 'idle' }
  | { at: 'working'; done: number; total: number }
  | { at: 'done'; answer: Answer }
  | { at: 'failed'; message: string };

/** Runs work that reports and can be stopped; stopping it, or leaving the place, leaves nothing behind. */
export function useTask<Answer>(run: (work: LongWork) => Promise<Answer>) {
  const [task, setTask] = useState<Task<Answer>>({ at: 'idle' });
  const aborter = useRef<AbortController>(undefined);
  const latest = useRef(run);
  latest.current = run;
  useEffect(() => () => aborter.current?.abort(), []);
  const start = useCallback(async () => {
    aborter.current?.abort();
    const own = new AbortController();
    aborter.current = own;
    const { signal } = own;
    setTask({ at: 'working', done: 0, total: 0 });
    const progress = (done: number, total: number) => {
      if (!signal.aborted) setTask({ at: 'working', done, total });
    };
    try {
      const answer = await latest.current({ signal, progress });
      if (!signal.aborted) setTask({ at: 'done', answer });
    } catch (error) {
      if (!signal.aborted) setTask({ at: 'failed', message: sentenceOf(error) });
    }
  }, []);
  const stop = useCallback(() => {
    aborter.current?.abort();
    setTask({ at: 'idle' });
  }, []);
  return { task, start: () => void start(), stop };
}

/** Errors made to be read carry their sentence; others say that something is wrong here. */
export function sentenceOf(error: unknown): string {
  if (error instanceof WorkbookError || (error instanceof Error && error.name === 'WorkbookRefused'))
    return error.message;
  const reason = error instanceof Error ? error.message : String(error);
  return `This failed (${reason}). The workbook is unchanged. This is a bug in Tonrow: please report it.`;
}
