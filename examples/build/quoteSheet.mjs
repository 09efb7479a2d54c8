import { readSource, sourceCell } from './source.mjs';
import { pageSettings, Sheet } from './sheet.mjs';
import { verdictColors } from './styles.mjs';
import { addTable } from './table.mjs';
import { address, columnName, escapeText } from './xml.mjs';

/** Row of the headings; the parts follow. */
export const headingRow = 5;

const numberColumns = ['Qty', 'Holes'];
/** Left of the marks, where it stays in sight. The formulas read from Mark on, so no row contains its own result. */
const verdict = { name: 'Verdict', item: 'verdict', style: 'bold', width: 13 };
const checks = [
  { name: 'Share of rating', item: 'use', style: 'share', width: 9 },
  { name: 'Governs', item: 'governs', width: 24 },
  { name: 'Note', item: 'note', style: 'wrapped', width: 70 },
  { name: 'Force', item: 'force', style: 'one', width: 9 },
  { name: 'Hits', item: 'hits', style: 'whole', width: 7 },
  { name: 'Mass', item: 'mass', style: 'one', width: 10 },
  { name: 'Route', item: 'route', width: 14 },
  { name: 'Minutes', item: 'minutes', style: 'one', width: 9 },
  { name: 'Cost', item: 'cost', style: 'money', width: 10 },
];
const inputWidths = [10, 6, 18, 12, 13, 13, 7, 7, 8, 8, 13, 9, 8, 8, 8, 9, 10];

const check = (item) =>
  `_xldudf_TONROW_ROWCHECK(Parts[[#Headers],[Mark]:[Press]],Parts[[#This Row],[Mark]:[Press]],ShopStamp,"${item}")`;

export function quoteSheet(folder, strings) {
  const [headings, ...parts] = readSource(folder, 'parts');
  const sheet = new Sheet('Quote', strings);
  // Right of the frozen columns: text does not run on across their edge in every program.
  sheet.set(3, 1, { value: 'Catwalk and handrail package, grain-handling tower', style: 'title' });
  sheet.set(3, 2, {
    value:
      'An invented job. The verdict stands beside the mark, the other checks right of the inputs; each is one formula per row.',
    style: 'note',
  });
  sheet.set(4, 3, { value: 'Checked with', style: 'bold' });
  sheet.set(5, 3, { formula: 'ShopStamp', style: 'stamp' });
  const rows = parts.map((cells, index) => [
    checkCell(verdict),
    ...inputCells(headings, cells, parts.slice(0, index)),
    ...checks.map(checkCell),
  ]);
  const columns = [checkColumn(verdict), ...headings.map((name) => ({ name })), ...checks.map(checkColumn)];
  addTable(sheet, { id: 1, name: 'Parts', column: 1, row: headingRow, columns, rows });
  return { sheet, headings, parts, xml: sheet.part(layout(headings.length, parts.length)) };
}

function inputCells(headings, cells, above) {
  return cells.map((text, column) => {
    if (text === 'sum') return sumOf(above, column);
    const numeric = numberColumns.includes(headings[column]);
    return sourceCell(text, { numeric, style: numeric ? 'general' : 'text' });
  });
}

/** A subtotal: the sheet's own sum of the rows above. */
function sumOf(above, column) {
  const name = columnName(column + 2);
  return {
    formula: `SUM(${name}${headingRow + 1}:${name}${headingRow + above.length})`,
    value: above.reduce((sum, cells) => sum + Number(cells[column]), 0),
  };
}

const checkCell = ({ item, style }) => ({ formula: check(item), style });
const checkColumn = ({ name, item }) => ({ name, formula: check(item) });

function layout(inputs, count) {
  const last = headingRow + count;
  const area = `A${headingRow + 1}:A${last}`;
  const at = `$A${headingRow + 1}`;
  const rules = [
    [`${at}="OK"`, verdictColors.good],
    [`${at}="Near limit"`, verdictColors.near],
    [
      `OR(${at}="Not checked",${at}="Check input",${at}="No part",${at}="OK so far")`,
      verdictColors.notChecked,
    ],
    [`${at}="Off press"`, verdictColors.offPress],
    [`LEN(${at})>0`, verdictColors.bad],
  ].map(
    ([formula, color], index) =>
      `<cfRule type="expression" dxfId="${color}" priority="${index + 1}" stopIfTrue="1"><formula>${escapeText(formula)}</formula></cfRule>`,
  );
  const frozen = address(3, headingRow + 1);
  return {
    views:
      '<sheetView tabSelected="1" workbookViewId="0">' +
      `<pane xSplit="2" ySplit="${headingRow}" topLeftCell="${frozen}" activePane="bottomRight" state="frozen"/>` +
      `<selection pane="bottomRight" activeCell="${frozen}" sqref="${frozen}"/></sheetView>`,
    columns: [verdict.width, ...inputWidths, ...checks.map(({ width }) => width)],
    after:
      `<conditionalFormatting sqref="${area}">${rules.join('')}</conditionalFormatting>` +
      pageSettings +
      `<ignoredErrors><ignoredError sqref="B${headingRow + 1}:${columnName(inputs + 1)}${last}" numberStoredAsText="1"/></ignoredErrors>`,
  };
}
