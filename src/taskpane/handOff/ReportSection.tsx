import { Button } from '@fluentui/react-components';
import { type SyntheticEvent, useRef } from 'react';
import type { Workbook } from '../../workbook/port.js';
import type { ShopState } from '../shared/shopState.js';
import { usePropose } from '../shared/change/useChange.js';
import { canPrint } from '../shared/print/canPrint.js';
import { sheetOfPage } from '../shared/print/sheetOfPage.js';
import { useHandOffStyles } from './handOffStyles.js';
import { Progress } from './Progress.js';
import { reportRows } from './report/lists.js';
import { reportData } from './report/reportData.js';
import { reportHtml } from './report/reportHtml.js';
import { reportStyle } from './report/reportStyle.js';
import { useChangedSince } from './useChangedSince.js';
import { useTask } from './useTask.js';

interface Input {
  workbook: Workbook;
  shop: Extract<ShopState, { kind: 'ready' }>;
}

/** The report: made from the lists and the shop as they are now, shown, printed or saved as a page. */
export function ReportSection({ workbook, shop }: Input) {
  const styles = useHandOffStyles();
  const frame = useRef<HTMLIFrameElement>(null);
  const { task, start, stop } = useTask(async (work) => {
    const rows = await reportRows(workbook, shop, work);
    const data = reportData(rows, shop, today());
    return { rows: rows.length, page: reportHtml(data), shown: reportHtml(data, '') };
  });
  const changed = useChangedSince(workbook, task.at === 'done' && task.answer);
  const propose = usePropose();
  const sheetOf = (page: string) => ({
    title: 'Put it on a sheet',
    make: () => sheetOfPage(workbook, page, 'Press check'),
  });
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
        <>
          <iframe
            ref={frame}
            title="Report"
            className={styles.frame}
            sandbox="allow-same-origin allow-modals"
            srcDoc={task.answer.shown}
            onLoad={styled}
          />
          <div className={styles.actions}>
            {canPrint() && (
              <>
                <Button appearance="primary" onClick={() => frame.current?.contentWindow?.print()}>
                  Print report
                </Button>
                <Button as="a" href={pageAddress(task.answer.page)} download="press-check.html">
                  Save as a page
                </Button>
              </>
            )}
            <Button onClick={() => propose(sheetOf(task.answer.page))}>Put it on a sheet</Button>
          </div>
          {!canPrint() && (
            <p className={styles.text}>
              Here a pane can neither print nor save a file: put the report on a sheet and print that.
            </p>
          )}
        </>
      )}
      <div className={styles.actions}>
        <Button onClick={start}>{task.at === 'done' ? 'Make it again' : 'Make report'}</Button>
      </div>
    </section>
  );
}

/** The pane's policy lets no style in as text, so the frame gets its rules from here. */
function styled({ currentTarget }: SyntheticEvent<HTMLIFrameElement>): void {
  const { contentWindow, contentDocument } = currentTarget;
  const page = contentWindow as (Window & typeof globalThis) | null;
  if (!page?.CSSStyleSheet || !contentDocument) return;
  const sheet = new page.CSSStyleSheet();
  sheet.replaceSync(reportStyle);
  contentDocument.adoptedStyleSheets = [sheet];
}

function today(): string {
  return new Date().toLocaleDateString('en', { year: 'numeric', month: 'long', day: 'numeric' });
}

function pageAddress(page: string): string {
  return `data:text/html;charset=utf-8,${encodeURIComponent(page)}`;
}
