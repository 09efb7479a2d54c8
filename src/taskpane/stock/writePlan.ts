import type { ListPlan } from '../../core/stock/list/jobPlan.js';
import type { SheetCell, SheetContent } from '../../core/stock/sheet/sheetCell.js';
import { stockSheet } from '../../core/stock/sheet/stockSheet.js';
import { freeName } from '../../sheet/names.js';
import type { Workbook } from '../../workbook/port.js';
import type { Proposal } from '../shared/change/proposal.js';

const formats: Record<NonNullable<SheetCell>['kind'], string> = {
  title: '@',
  heading: '@',
  text: '@',
  count: '#,##0',
  length: 'General',
  mass: '#,##0',
  money: '#,##0.00',
  share: '0.0%',
  angle: '0.0',
};
/** A cell of format text shows longer texts as a row of signs. */
const longestShown = 255;
const longestName = 31;

/** What writes a plan to a new sheet of its own: no cell that holds something is touched. */
export async function writePlan(workbook: Workbook, plan: ListPlan, title: string): Promise<Proposal> {
  const { name, rows, widths }: SheetContent = stockSheet(plan);
  const taken = (await workbook.sheets()).map((sheet) => sheet.name);
  const sheet = freeName(name, taken, { joint: ' ', longest: longestName });
  const columns = rows.reduce((most, row) => Math.max(most, row.length), 1);
  const cells = rows.map((row) => Array.from({ length: columns }, (_, at) => row[at] ?? null));
  return {
    title: `${title} ${sheet}`,
    remarks: [
      'It is as of now: it does not change with the list. Amounts are numbers, so a quote can read them.',
    ],
    steps: [
      { kind: 'sheet', name: sheet },
      {
        kind: 'cells',
        area: { sheet, row: 0, column: 0, rows: cells.length, columns },
        contents: cells.map((row) => row.map((cell) => cell?.value ?? null)),
        formats: cells.map((row) => row.map(formatOf)),
        widths: Array.from({ length: columns }, (_, at) => widths[at]),
      },
    ],
  };
}

function formatOf(cell: SheetCell): string | undefined {
  if (cell === null) return undefined;
  const isLong = typeof cell.value === 'string' && cell.value.length > longestShown;
  return isLong ? undefined : formats[cell.kind];
}
