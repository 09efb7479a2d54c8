import { Button } from '@fluentui/react-components';
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
import { useTask } from './useTask.js';

interface Input {
  workbook: Workbook;
  shop: Extract<ShopState, { kind: 'ready' }>;
}

/** The report: made from the lists and the shop as they are now, shown, printed or saved as a page. */
export function ReportSection({ workbook, shop }: Input) {
  const styles = useSectionStyles();
  const { task, start, stop } = useTask(async (work) => {
    const rows = await reportRows(workbook, shop, work);
    const data = reportData(rows, shop, today());
    return { rows: rows.length, page: reportHtml(data), shown: reportHtml(data, '') };
  });
  const changed = useChangedSince(workbook, task.at === 'done' && task.answer);
  return (
    <section className={styles.part} aria-label="Report">
      <h2 className={styles.heading}>Report</h2>
      <p className={styles.text}>
        Total, counts by verdict, failing rows and assumptions on the first page; the press data behind it.
      </p>
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
          There is no list of parts to report: make the list a table, with a column Section.
        </p>
      )}
      {task.at === 'done' && changed && (
        <p className={styles.text} role="status">
          The workbook was changed since: this report is of before.
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
          style={reportStyle}
        />
      )}
      <div className={styles.actions}>
        <Button onClick={start}>{task.at === 'done' ? 'Make it again' : 'Make report'}</Button>
      </div>
    </section>
  );
}
