import { Button } from '@fluentui/react-components';
import { type SyntheticEvent, useRef } from 'react';
import type { Workbook } from '../../../workbook/port.js';
import { usePropose } from '../change/useChange.js';
import { canPrint } from './canPrint.js';
import { sheetOfPage } from './sheetOfPage.js';
import { useSectionStyles } from '../sectionStyles.js';

interface Props {
  workbook: Workbook;
  /** What it is: `Report`. */
  name: string;
  /** What it is called as a file. */
  file: string;
  /** Where it may be put on a sheet as text. */
  sheet?: string;
  page: string;
  /** The page without its style, which the pane's policy lets in no text. */
  shown: string;
  style: string;
}

/** A page to print: shown, printed, saved as a file, or put on a sheet. */
export function PrintedPage({ workbook, name, file, sheet, page, shown, style }: Props) {
  const styles = useSectionStyles();
  const frame = useRef<HTMLIFrameElement>(null);
  const propose = usePropose();
  const putOn = (title: string) =>
    propose({ title: 'Put it on a sheet', make: () => sheetOfPage(workbook, page, title) });
  const lower = name.toLowerCase();
  return (
    <>
      <iframe
        ref={frame}
        title={name}
        className={styles.frame}
        sandbox="allow-same-origin allow-modals"
        srcDoc={shown}
        onLoad={(event) => styled(event, style)}
      />
      <div className={styles.actions}>
        {canPrint() && (
          <>
            <Button appearance="primary" onClick={() => frame.current?.contentWindow?.print()}>
              Print {lower}
            </Button>
            <Button as="a" href={pageAddress(page)} download={file}>
              Save as a page
            </Button>
          </>
        )}
        {sheet !== undefined && <Button onClick={() => putOn(sheet)}>Put it on a sheet</Button>}
      </div>
      {!canPrint() && (
        <p className={styles.text}>
          Here a pane can neither print nor save a file: put the {lower} on a sheet and print that.
        </p>
      )}
    </>
  );
}

/** The pane's policy lets no style in as text, so the frame gets its rules from here. */
function styled({ currentTarget }: SyntheticEvent<HTMLIFrameElement>, style: string): void {
  const { contentWindow, contentDocument } = currentTarget;
  const page = contentWindow as (Window & typeof globalThis) | null;
  if (!page?.CSSStyleSheet || !contentDocument) return;
  const sheet = new page.CSSStyleSheet();
  sheet.replaceSync(style);
  contentDocument.adoptedStyleSheets = [sheet];
}

function pageAddress(page: string): string {
  return `data:text/html;charset=utf-8,${encodeURIComponent(page)}`;
}
