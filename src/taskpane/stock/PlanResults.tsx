import { Button, MessageBar, MessageBarBody } from '@fluentui/react-components';
import { useState } from 'react';
import { formatMass } from '../../core/quantity/formatMass.js';
import { moneyWords } from '../../core/say/stockPlanSentences.js';
import { blankLossWords } from '../../core/stock/list/planWords.js';
import { planPage } from '../../print/stock/planPage.js';
import { planStyle } from '../../print/stock/planStyle.js';
import type { Workbook } from '../../workbook/port.js';
import { usePropose } from '../shared/change/useChange.js';
import { jobName as fileName } from '../shared/jobName.js';
import { PrintedPage } from '../shared/print/PrintedPage.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { today } from '../shared/today.js';
import { useWidth } from '../shared/useWidth.js';
import { jobName } from './jobName.js';
import { JobResult } from './JobResult.js';
import type { PanePlan } from './planList.js';
import { writePlan } from './writePlan.js';

interface Props {
  workbook: Workbook;
  answer: PanePlan;
}

/** What came of a plan: in all, to write and to print, and section by section. */
export function PlanResults({ workbook, answer }: Props) {
  const styles = useSectionStyles();
  const propose = usePropose();
  const { element, width } = useWidth<HTMLDivElement>();
  const [printed, setPrinted] = useState<{ page: string; shown: string }>();
  const { plan, notBegun } = answer;
  const title = 'Write plan to sheet';
  const write = () => propose({ title, make: () => writePlan(workbook, plan, title) });
  const print = () => {
    const of = (style: string) => planPage(plan, { name: fileName(), date: today() }, style);
    setPrinted(printed ? undefined : { page: of(planStyle), shown: of('') });
  };
  return (
    <div ref={element} className={styles.part}>
      <p className={styles.text}>
        <strong>{inAll(answer)}</strong>
      </p>
      {notBegun.length > 0 && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            Not planned, since you stopped first: {notBegun.map(jobName).join('; ')}.
          </MessageBarBody>
        </MessageBar>
      )}
      {plan.unplanned.length > 0 && (
        <MessageBar intent="warning" layout="multiline">
          <MessageBarBody>
            Not planned, since no length can be read:{' '}
            {plan.unplanned.map(({ job }) => jobName(job)).join('; ')}.
          </MessageBarBody>
        </MessageBar>
      )}
      {blankLossWords(plan).map((words) => (
        <p key={words} className={styles.text}>
          {words}
        </p>
      ))}
      {plan.planned.length > 0 && (
        <div className={styles.actions}>
          <Button appearance="primary" onClick={write}>
            {title}
          </Button>
          <Button onClick={print} aria-expanded={printed !== undefined}>
            {printed ? 'Close the page' : 'Print'}
          </Button>
        </div>
      )}
      {printed && (
        <PrintedPage
          {...{ workbook, ...printed }}
          name="Plan"
          file="stock-plan.html"
          sheet="Stock plan page"
          style={planStyle}
        />
      )}
      {plan.planned.map((planned, at) => (
        <JobResult key={planned.job.key} {...{ planned, plan, width }} isFirst={at === 0} />
      ))}
    </div>
  );
}

/** All sections together: bars, mass, cost where each has one. */
function inAll({ plan: { planned, unit, currency } }: PanePlan): string {
  const bars = planned.flatMap(({ purchases }) => purchases).reduce((sum, each) => sum + each.bars, 0);
  const boughtKg = planned.reduce((sum, { mass }) => sum + mass.boughtKg, 0);
  const costs = planned.flatMap(({ cost }) => cost ?? []);
  const isPriced = costs.length === planned.length && costs.length > 0;
  const cost = costs.reduce((sum, each) => sum + each, 0);
  return [
    `${bars.toLocaleString('en')} ${bars === 1 ? 'bar' : 'bars'}`,
    formatMass(boughtKg, unit),
    ...(isPriced ? [moneyWords(cost, currency)] : []),
  ].join(' · ');
}
