import { headingRow } from './quoteSheet.mjs';
import { pageSettings, Sheet } from './sheet.mjs';

/** One call for the whole list; its rows stand on the same rows as the Quote sheet's. */
export function listSheet(parts, strings) {
  const sheet = new Sheet('List check', strings);
  sheet.set(1, 1, { value: 'The same list in one call', style: 'title' });
  sheet.set(1, 2, {
    value: 'The marks are read from the Quote sheet; the checks spill beside them.',
    style: 'note',
  });
  ['Mark', ...parts.map(([mark]) => mark)].forEach((mark, index) => {
    const row = headingRow + index;
    sheet.set(1, row, { formula: `Quote!B${row}&""`, value: mark, style: index === 0 ? 'bold' : 'general' });
  });
  sheet.set(2, headingRow, {
    formula: '_xldudf_TONROW_LISTCHECK(Parts[[#All],[Mark]:[Press]],ShopStamp,"verdict, use")',
    spill: true,
    style: 'bold',
  });
  return {
    sheet,
    xml: sheet.part({
      views:
        '<sheetView workbookViewId="0">' +
        `<pane ySplit="${headingRow}" topLeftCell="A${headingRow + 1}" activePane="bottomLeft" state="frozen"/>` +
        `<selection pane="bottomLeft" activeCell="A${headingRow + 1}" sqref="A${headingRow + 1}"/></sheetView>`,
      columns: [12, 18, 14],
      after: pageSettings,
    }),
  };
}
