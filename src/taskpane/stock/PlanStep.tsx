import { Button, MessageBar, MessageBarBody } from '@fluentui/react-components';
import { useEffect, useState } from 'react';
import { barsWords } from '../../core/say/stockPlanSentences.js';
import type { StockJobs } from '../../core/stock/list/stockJob.js';
import { whyUnplanned } from '../../core/stock/list/planJobs.js';
import type { Workbook } from '../../workbook/port.js';
import { AtOnceBar } from '../shared/AtOnceBar.js';
import { counted } from '../shared/change/describeStep.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import type { ReadyShop } from '../shop/sheet/readyShop.js';
import { PlanResults } from './PlanResults.js';
import type { PanePlan } from './planList.js';
import { type PlanState, usePlan } from './usePlan.js';

interface Props {
  workbook: Workbook;
  shop: ReadyShop;
  jobs: StockJobs;
}

/** The plan: made, stopped, shown. One button does both, so that the keyboard stays where it is. */
export function PlanStep({ workbook, shop, jobs }: Props) {
  const styles = useSectionStyles();
  const { state, isOfBefore, start, stop } = usePlan(jobs, shop.shop);
  const ready = jobs.jobs.filter((job) => whyUnplanned(job) === undefined).length;
  const isPlanning = state.at === 'planning';
  return (
    <section className={styles.part} aria-label="Plan">
      <h2 className={styles.heading}>3. Plan</h2>
      {ready < jobs.jobs.length && (
        <p className={styles.text}>
          {ready === 0
            ? 'No section has a length yet: give lengths above, or plan with the invented ones.'
            : `${counted(jobs.jobs.length - ready, 'section has', 'sections have')} no length that can be read, and no plan until then.`}
        </p>
      )}
      <div className={styles.actions}>
        <Button
          appearance="primary"
          disabledFocusable={ready === 0 && !isPlanning}
          onClick={() => (isPlanning ? stop() : start())}
        >
          {isPlanning ? 'Stop and keep the best' : state.at === 'idle' ? 'Plan the bars' : 'Plan again'}
        </Button>
      </div>
      {isPlanning && (
        <>
          <AtOnceBar aria-label="Sections planned" value={state.done / state.total} />
          <p className={styles.text}>
            Section {state.done + 1} of {state.total}. {state.says}.
          </p>
        </>
      )}
      <Told state={state} />
      {state.at === 'failed' && (
        <MessageBar intent="error" layout="multiline">
          <MessageBarBody>{state.message}</MessageBarBody>
        </MessageBar>
      )}
      {state.at === 'done' && isOfBefore && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            The list, the lengths or the shop have changed since this plan. Plan again.
          </MessageBarBody>
        </MessageBar>
      )}
      {state.at === 'done' && <PlanResults {...{ workbook }} answer={state.answer} />}
    </section>
  );
}

/** To a screen reader progress is told no more often than this. */
const tellEveryMs = 5000;
const unseen = {
  position: 'absolute',
  width: 1,
  height: 1,
  overflow: 'hidden',
  clipPath: 'inset(50%)',
} as const;

/** What a screen reader is told: that it goes on, now and then, and how it ended. */
function Told({ state }: { state: PlanState }) {
  const [words, setWords] = useState('');
  const says = wordsOf(state);
  const isPlanning = state.at === 'planning';
  useEffect(() => {
    if (!isPlanning) setWords(says);
  }, [says, isPlanning]);
  const [latest] = useState({ says });
  latest.says = says;
  useEffect(() => {
    if (!isPlanning) return undefined;
    const timer = setInterval(() => setWords(latest.says), tellEveryMs);
    return () => clearInterval(timer);
  }, [isPlanning, latest]);
  return (
    <p aria-live="polite" style={unseen}>
      {words}
    </p>
  );
}

function wordsOf(state: PlanState): string {
  if (state.at === 'planning') return `${state.says}.`;
  if (state.at === 'failed') return state.message;
  return state.at === 'done' ? totalWords(state.answer) : '';
}

/** How it ended, in a sentence: `Planned: 37 bars of 5 sections.` */
export function totalWords({ plan: { planned } }: PanePlan): string {
  const bars = planned.reduce(
    (sum, { purchases }) => sum + purchases.reduce((all, each) => all + each.bars, 0),
    0,
  );
  return `Planned: ${barsWords(bars)} of ${counted(planned.length, 'section')}.`;
}
