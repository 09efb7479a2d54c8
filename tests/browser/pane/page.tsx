import { mountPane } from '../../../src/taskpane/index.js';
import { MemoryWorkbook } from '../../taskpane/support/memoryWorkbook.js';
import { fillWorkbook } from '../../taskpane/support/workbooks.js';
import { quoteBook } from '../../taskpane/steps/quoteBook.js';

declare global {
  interface Window {
    tonrow: MemoryWorkbook;
    unmount: () => void;
  }
}

const kind = new URLSearchParams(location.search).get('workbook') ?? 'empty';
window.tonrow = kind === 'quote' ? quoteBook() : new MemoryWorkbook('Sheet1');
const pane = document.querySelector<HTMLElement>('#pane');
if (!pane) throw new Error('no #pane');
const element = pane;
void fillWorkbook(window.tonrow, kind).then(() => {
  window.unmount = mountPane(element, window.tonrow);
});
