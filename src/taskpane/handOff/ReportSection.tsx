import { Button, Checkbox, Input } from '@fluentui/react-components';
import type { Workbook } from '../../workbook/port.js';
import type { ShopState } from '../shared/shopState.js';
import { useSectionStyles } from '../shared/sectionStyles.js';
import { PrintedPage } from '../shared/print/PrintedPage.js';
import { Progress } from './Progress.js';
import { reportRows } from './report/lists.js';
import { reportData } from './report/reportData.js';
import { reportHtml } from './report/reportHtml.js';
import { reportStyle } from './report/reportStyle.js';
import { useChangedSince } from '../shared/useChangedSince.js';
import { today } from '../shared/today.js';
import { PaneField } from '../shared/PaneField.js';
import { useKept } from '../shared/useKept.js';
import { jobName } from '../shared/jobName.js';
import { useTask } from './useTask.js';

interface Props {
  workbook: Workbook;
  shop: Extract<ShopState, { kind: 'ready' }>;
}

/** The report: made from the lists and the shop as they are now, shown, printed or saved as a page. */
export function ReportSection({ workbook, shop }: Props) {
  const styles = useSectionStyles();
  const job = useKept('report job', () => '');
  const customer = useKept('report customer', () => '');
  const withHidden = useKept('report hidden rows', () => true);
  const { task, start, stop } = useTask(async (work) => {
    const { rows, told } = await reportRows(workbook, shop, work, { withHidden: withHidden.value });
    const named = { job: job.value.trim(), customer: customer.value.trim() };
    const data = reportData(rows, shop, { ...named, file: jobName(), date: today(), told });
    const style = reportStyle(data, data.stamp);
    return { rows: rows.length, page: reportHtml(data), shown: reportHtml(data, ''), style };
  });
  const changed = useChangedSince(workbook, task.at === 'done' && task.answer);
  return (
    <section className={styles.part} aria-label="Report">
      <h2 className={styles.heading}>Report</h2>
      <p className={styles.text}>
        Page one has the totals, the verdicts, the caution and what was assumed. Then come failing rows and
        rows near a limit with their drawings, rows by press, mass, and the press data.
      </p>
      <PaneField label="Job">
        <Input value={job.value} onChange={(_, { value }) => job.set(value)} />
      </PaneField>
      <PaneField label="Customer">
        <Input value={customer.value} onChange={(_, { value }) => customer.set(value)} />
      </PaneField>
      <Checkbox
        label="Report hidden rows too"
        checked={withHidden.value}
        onChange={(_, { checked }) => withHidden.set(checked === true)}
      />
      {task.at === 'working' && (
        <Progress label="Checking rows" done={task.done} total={task.total} stop={stop} />
      )}
      {task.at === 'failed' && (
        <p className={styles.text} role="alert">
          {task.message}
        </p>
      )}
      {task.at === 'done' && task.answer.rows === 0 && (
        <p className={styles.text} role="status">
          There is no list of parts to report. Make the list a table with a Section column.
        </p>
      )}
      {task.at === 'done' && changed && (
        <p className={styles.text} role="status">
          The workbook has changed since this report.
        </p>
      )}
      {task.at === 'done' && task.answer.rows > 0 && (
        <PrintedPage
          {...{ workbook }}
          name="Report"
          file="press-check.html"
          sheet="Press check"
          page={task.answer.page}
          shown={task.answer.shown}
          style={task.answer.style}
        />
      )}
      <div className={styles.actions}>
        <Button onClick={start}>{task.at === 'done' ? 'Refresh report' : 'Make report'}</Button>
      </div>
    </section>
  );
}
