import { readSource, sourceCell } from './source.mjs';
import { pageSettings, Sheet } from './sheet.mjs';
import { addTable } from './table.mjs';

const firstRow = 6;
/** Side by side, so that each table can grow downward. */
const tables = [
  { id: 2, name: 'Presses', source: 'presses', column: 1, numbers: ['Bay A', 'Bay B'] },
  { id: 3, name: 'Tools', source: 'tools', column: 6, numbers: ['Count', 'Hits since grind'] },
  { id: 4, name: 'Grades', source: 'grades', column: 16, numbers: ['Density'] },
  { id: 5, name: 'Settings', source: 'settings', column: 23, numbers: ['Value'] },
];
/** Not part of the stamp: no formula names it. */
const stock = { id: 8, name: 'Stock', source: 'stock', column: 27, numbers: ['Price', 'Available'] };
const whole = (name) => `${name}[[#Headers],[#Data]]`;

/** Where the workbook's name ShopStamp points. */
export const stampCell = 'Shop!$B$4';

export function shopSheet(folder, strings) {
  const sheet = new Sheet('Shop', strings);
  sheet.set(1, 1, { value: 'Shop data', style: 'title' });
  sheet.set(1, 2, { value: 'Starter presses are invented: replace them before quoting.', style: 'bold' });
  sheet.set(1, 3, {
    value:
      'A value is a limit; none: there is no such limit; blank: unknown, and rows that need it are Not checked.',
    style: 'note',
  });
  sheet.set(1, 4, { value: 'Shop stamp', style: 'bold' });
  sheet.set(2, 4, {
    formula: `_xldudf_TONROW_SHOP(${tables.map(({ name }) => whole(name)).join(',')})`,
    spill: true,
    style: 'stamp',
  });
  for (const { id, name, source, column, numbers } of [...tables, stock]) {
    const [headings, ...rows] = readSource(folder, source);
    const cells = rows.map((row) =>
      row.map((text, index) => {
        const numeric = numbers.includes(headings[index]);
        return sourceCell(text, { numeric, style: numeric && /^[\d.]*$/.test(text) ? 'general' : 'text' });
      }),
    );
    const columns = headings.map((heading) => ({ name: heading }));
    addTable(sheet, { id, name, column, row: firstRow, columns, rows: cells });
  }
  return { sheet, xml: sheet.part(layout()) };
}

function layout() {
  return {
    views:
      '<sheetView workbookViewId="0">' +
      `<pane ySplit="${firstRow}" topLeftCell="A${firstRow + 1}" activePane="bottomLeft" state="frozen"/>` +
      `<selection pane="bottomLeft" activeCell="A${firstRow + 1}" sqref="A${firstRow + 1}"/></sheetView>`,
    columns: [
      33, 9, 12, 12, 3, 8, 8, 9, 9, 9, 8, 7, 10, 27, 3, 12, 12, 13, 9, 9, 46, 3, 24, 10, 52, 3, 16, 9, 10, 12,
      10,
    ],
    after: pageSettings,
  };
}
