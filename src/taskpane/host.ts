import { ExcelWorkbook } from '../workbook/excel/excelWorkbook.js';
import { mountPane } from './index.js';

/** The pane in the spreadsheet host: what the page of the add-in loads. */
async function open(): Promise<void> {
  const { host } = await Office.onReady();
  // Opened in a browser by itself there is no workbook: the page keeps its own words.
  if (host !== Office.HostType.Excel) return;
  const element = document.getElementById('pane');
  if (!element) throw new Error('The page of the pane has no element #pane.');
  mountPane(element, new ExcelWorkbook());
}

void open();
