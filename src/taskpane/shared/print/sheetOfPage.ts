import { freeName } from '../../../sheet/names.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Proposal } from '../change/proposal.js';
import { pageRows } from './pageRows.js';

const longestName = 31;
/** A cell of format text shows longer texts as a row of signs. */
const longestShown = 255;

/** What puts a printable page on a new sheet of the workbook, from where every host prints. */
export async function sheetOfPage(workbook: Workbook, page: string, title: string): Promise<Proposal> {
  const rows = pageRows(page);
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 1);
  const contents = rows.map((row) => Array.from({ length: columns }, (_, at) => row[at] ?? null));
  const formats = contents.map((row) =>
    row.map((text) => (text !== null && text.length <= longestShown ? '@' : undefined)),
  );
  const taken = (await workbook.sheets()).map((sheet) => sheet.name);
  const name = freeName(title, taken, { joint: ' ', longest: longestName });
  const area = { sheet: name, row: 0, column: 0, rows: rows.length, columns };
  return {
    title: `Put it on the sheet ${name}`,
    remarks: ['It is text as of now: it does not change with the workbook. Print the sheet as any other.'],
    steps: [
      { kind: 'sheet', name },
      { kind: 'cells', area, contents, formats },
    ],
  };
}
