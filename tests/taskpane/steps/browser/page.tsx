import { mountPane } from '../../../../src/taskpane/index.js';
import type { MemoryWorkbook } from '../../support/memoryWorkbook.js';
import { quoteBook } from '../quoteBook.js';

declare global {
  interface Window {
    quoteBook: MemoryWorkbook;
  }
}

window.quoteBook = quoteBook();
const pane = document.querySelector<HTMLElement>('#pane');
if (!pane) throw new Error('no #pane');
mountPane(pane, window.quoteBook);
