import { useCallback, useEffect, useState } from 'react';
import type { Workbook } from '../../workbook/port.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import { useLatest } from '../shared/useLatest.js';
import { useWatch } from '../shared/useShop.js';
import { readSubject } from './readSubject.js';
import type { Subject } from './subject.js';

export type SubjectState =
  | { kind: 'reading' }
  | { kind: 'read'; subject: Subject }
  | { kind: 'failed'; message: string };

/** What is selected, read again whenever the selection or a cell changes. */
export function useSubject(workbook: Workbook): { state: SubjectState; again: () => void } {
  const [state, setState] = useState<SubjectState>({ kind: 'reading' });
  const read = useLatest(async (): Promise<SubjectState> => {
    try {
      return { kind: 'read', subject: await readSubject(workbook) };
    } catch (error) {
      if (error instanceof WorkbookError) return { kind: 'failed', message: error.message };
      throw error;
    }
  }, setState);
  useEffect(() => read(), [read, workbook]);
  useWatch(workbook, (change) => {
    if (change.kind !== 'sheets') read();
  });
  const again = useCallback(() => {
    setState({ kind: 'reading' });
    read();
  }, [read]);
  return { state, again };
}
