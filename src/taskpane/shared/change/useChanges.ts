import { useCallback, useState } from 'react';
import type { Workbook } from '../../../workbook/port.js';
import { WorkbookError } from '../../../workbook/workbookError.js';
import type { Revert } from '../../../workbook/write/step.js';
import type { Previewed, Proposal } from './proposal.js';

/** Where a proposed change is. */
export type Stage =
  | { at: 'planning'; proposal: Proposal }
  | { at: 'asking'; previewed: Previewed }
  | { at: 'writing'; proposal: Proposal; done: number; total: number; stop: () => void }
  | { at: 'failed'; proposal: Proposal; message: string };

/** A change that was written, and what takes it back. */
export interface Written {
  title: string;
  revert: Revert;
}

const keptWrites = 20;

/** Proposed changes: planning, asking, writing with progress, and taking back, the newest first. */
export function useChanges(workbook: Workbook) {
  const [stage, setStage] = useState<Stage>();
  const [written, setWritten] = useState<readonly Written[]>([]);
  const [refusal, setRefusal] = useState<string>();

  const propose = useCallback(
    (proposal: Proposal) => {
      setRefusal(undefined);
      setStage({ at: 'planning', proposal });
      workbook.plan(proposal.steps).then(
        (plan) => setStage({ at: 'asking', previewed: { proposal, plan } }),
        (error: unknown) => setStage({ at: 'failed', proposal, message: sentenceOf(error) }),
      );
    },
    [workbook],
  );

  const write = async ({ proposal, plan }: Previewed) => {
    const aborter = new AbortController();
    const stop = () => aborter.abort();
    const progress = (done: number, total: number) =>
      setStage({ at: 'writing', proposal, done, total, stop });
    progress(0, plan.cells);
    try {
      const revert = await workbook.write(plan, { confirmed: true, signal: aborter.signal, progress });
      setWritten((before) => [{ title: proposal.title, revert }, ...before].slice(0, keptWrites));
      setStage(undefined);
      proposal.written?.();
    } catch (error) {
      setStage({ at: 'failed', proposal, message: sentenceOf(error) });
    }
  };

  const takeBack = async () => {
    const [newest, ...older] = written;
    if (!newest) return;
    setRefusal(undefined);
    try {
      await newest.revert.run();
      setWritten(older);
    } catch (error) {
      setRefusal(sentenceOf(error));
    }
  };

  const forget = () => {
    setRefusal(undefined);
    setWritten((before) => before.slice(1));
  };
  return { stage, written, refusal, propose, write, takeBack, forget, close: () => setStage(undefined) };
}

function sentenceOf(error: unknown): string {
  if (error instanceof WorkbookError) return error.message;
  return 'The workbook did not answer as expected. Nothing more is known; look at the sheet before you go on.';
}
