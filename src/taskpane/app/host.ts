import { ExcelWorkbook } from '../../workbook/excel/excelWorkbook.js';
import { mountPane } from '../index.js';

/** The pane in the spreadsheet host: what the page of the add-in loads. */
async function open(): Promise<void> {
  await Office.onReady();
  const element = document.getElementById('pane');
  if (!element) throw new Error('The page of the pane has no element #pane.');
  mountPane(element, new ExcelWorkbook());
}

void open();
