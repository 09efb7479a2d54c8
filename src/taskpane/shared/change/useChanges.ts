import { useCallback, useState } from 'react';
import type { Area } from '../../../workbook/area.js';
import type { Workbook } from '../../../workbook/port.js';
import { WorkbookError } from '../../../workbook/workbookError.js';
import type { Revert } from '../../../workbook/step.js';
import { readCheckedLists } from '../checkedLists.js';
import { counted } from './describeStep.js';
import type { Making, Previewed, Proposal } from './proposal.js';

/** Where a proposed change is. */
export type Stage =
  | { at: 'planning'; title: string }
  | { at: 'asking'; title: string; previewed: Previewed }
  | { at: 'writing'; title: string; done: number; total: number; stop: () => void }
  | { at: 'failed'; title: string; message: string };

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
  const [trouble, setTrouble] = useState<string>();

  const propose = useCallback(
    (asked: Proposal | Making) => {
      const { title } = asked;
      setRefusal(undefined);
      setStage({ at: 'planning', title });
      stageFor(asked, workbook).then(setStage, (error: unknown) =>
        setStage({ at: 'failed', title, message: sentenceOf(error) }),
      );
    },
    [workbook],
  );
  const goTo = useCallback(
    (area: Area) => {
      setTrouble(undefined);
      workbook.goTo(area).catch((error: unknown) => setTrouble(sentenceOf(error)));
    },
    [workbook],
  );

  const write = async ({ proposal, plan }: Previewed) => {
    const aborter = new AbortController();
    const stop = () => aborter.abort();
    const { title } = proposal;
    const progress = (done: number, total: number) => setStage({ at: 'writing', title, done, total, stop });
    progress(0, plan.cells);
    try {
      const revert = await workbook.write(plan, { confirmed: true, signal: aborter.signal, progress });
      setWritten((before) => [{ title, revert }, ...before].slice(0, keptWrites));
      setStage(undefined);
      proposal.written?.();
    } catch (error) {
      setStage({ at: 'failed', title, message: sentenceOf(error) });
    }
  };

  const takeBack = async () => {
    const [newest, ...older] = written;
    if (!newest) return;
    setRefusal(undefined);
    setTrouble(undefined);
    try {
      const hanging = await hangingRows(newest, workbook);
      if (hanging > 0)
        return setRefusal(
          `${counted(hanging, 'row is', 'rows are')} checked with this shop: remove the check columns first. Nothing was undone.`,
        );
      await newest.revert.run();
      setWritten(older);
    } catch (error) {
      const isUndone = error instanceof WorkbookError && error.trouble === 'undone';
      if (isUndone) setWritten(older);
      (isUndone ? setTrouble : setRefusal)(sentenceOf(error));
    }
  };

  /** Keeping the newest keeps those before it too. */
  const keep = () => {
    setRefusal(undefined);
    setWritten([]);
  };
  return {
    ...{ stage, written, refusal, trouble, propose, goTo, write, takeBack, keep },
    close: () => setStage(undefined),
    closeTrouble: () => setTrouble(undefined),
  };
}

/** Rows that would show errors without what a change made: those checked with the shop cell it named. */
async function hangingRows({ revert }: Written, workbook: Workbook): Promise<number> {
  if (!revert.plan.steps.some(({ kind }) => kind === 'name')) return 0;
  const lists = await readCheckedLists(workbook);
  return lists.reduce((sum, { rows }) => sum + rows, 0);
}

async function stageFor(asked: Proposal | Making, workbook: Workbook): Promise<Stage> {
  const { title } = asked;
  const proposal = 'make' in asked ? await asked.make() : asked;
  if (typeof proposal === 'string') return { at: 'failed', title, message: proposal };
  const plan = await workbook.plan(proposal.steps);
  return { at: 'asking', title, previewed: { proposal, plan } };
}

function sentenceOf(error: unknown): string {
  if (error instanceof WorkbookError) return error.message;
  return 'The workbook did not answer as expected. Look at the sheet before you go on.';
}
