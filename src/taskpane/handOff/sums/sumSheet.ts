import { isBlank } from '../../../core/quantity/cellValue.js';
import { readHeadings } from '../../../core/row/headings/readHeadings.js';
import { type OtherRowAt, otherRowsOf, rowKindOf } from '../../../core/row/rowKind.js';
import { otherRowSentences } from '../../../core/say/otherRows.js';
import { rowRuns } from '../../../core/say/rowRuns.js';
import { type Verdict, verdicts } from '../../../core/check/verdict.js';
import { nameKey } from '../../../core/shop/table.js';
import { freeName } from '../../../sheet/names.js';
import type { Content } from '../../../workbook/content.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { checkHeadings } from '../../shared/checkedLists.js';
import type { PartsList } from '../../shared/partsLists.js';
import { textQuantities } from './textQuantities.js';

/*
 * A sheet that adds up a list: pieces, mass and paint area by section, grade, press and verdict, in the spreadsheet's
 * own formulas, so that it follows the list.
 */

const longestName = 31;
const noPart: Verdict = 'No part';

/** What is added up, and what it is called on the sheet. */
type Sum = { heading: string; column: string; counts?: 'blank is one' };

/** What puts the sums of a list on a new sheet; a sentence where there is nothing to add up. */
export function sumSheet(list: PartsList, sheetNames: readonly string[]): Proposal | string {
  const columns = columnsOf(list);
  if (!columns.qty) return `The list ${list.name} has no Qty column, so there are no pieces to add up.`;
  const sums: Sum[] = [
    { heading: 'Pieces', column: columns.qty, counts: 'blank is one' },
    ...(columns.mass ? [{ heading: checkHeadings.mass, column: columns.mass }] : []),
    ...(columns.paint ? [{ heading: 'Paint area', column: columns.paint }] : []),
  ];
  const blocks = [
    { title: 'Section', column: columns.section },
    { title: 'Grade', column: columns.grade },
    { title: 'Press', column: columns.press },
    { title: checkHeadings.verdict, column: columns.verdict },
  ].flatMap(({ title, column }) => (column === undefined ? [] : [{ title, column }]));
  const rows: Content[][] = [[`Sums of ${list.name}`]];
  for (const { title, column } of blocks) {
    rows.push([]);
    for (const row of blockOf(list, title, column, sums)) rows.push(row);
  }
  rows.push([], ['All', ...sums.map((sum) => ({ formula: allOf(list, columns, sum) }))]);
  for (const leftOut of textQuantities(list)) rows.push([leftOut]);
  const width = sums.length + 1;
  const contents = rows.map((row) => Array.from({ length: width }, (_, at) => row[at] ?? null));
  const name = freeName('Sums', sheetNames, { joint: ' ', longest: longestName });
  const area = { sheet: name, row: 0, column: 0, rows: contents.length, columns: width };
  const formats = contents.map((row) => row.map((_, at) => (at === 0 ? '@' : undefined)));
  return {
    title: `Add the sheet ${name}`,
    remarks: remarksOf(list, columns),
    steps: [
      { kind: 'sheet', name },
      { kind: 'cells', area, contents, formats },
    ],
  };
}

function remarksOf(list: PartsList, { mass, paint, verdict, press }: Columns): string[] {
  const isTyped = press !== undefined && nameKey(press) !== nameKey(checkHeadings.press);
  const lacking = [
    ...(mass ? [] : [checkHeadings.mass]),
    ...(paint ? [] : ['Paint area']),
    ...(verdict ? [] : [checkHeadings.verdict]),
  ];
  return [
    `The formulas follow the list ${list.name}. For a section or press that is new, add the sheet again.`,
    ...(lacking.length > 0
      ? [`Not added up, since the list has no such column: ${lacking.join(', ')}.`]
      : []),
    ...textQuantities(list),
    ...(list.hidden.length > 0 ? ['Hidden rows are added up too.'] : []),
    ...otherRowRemarks(list, verdict),
    ...(isTyped || press === undefined
      ? [
          `${isTyped ? 'The sums by press go by what is typed under Press' : 'There are no sums by press'}. For the press that runs each row, first add the column ${checkHeadings.press} to the list.`,
        ]
      : []),
  ];
}

/** A total among the rows is no part: rows with a verdict are, where the list shows it and it is not that there is none. */
function allOf(list: PartsList, { verdict, section, grade }: Columns, sum: Sum): string {
  if (verdict !== undefined)
    return sumOf(
      list,
      [
        [verdict, '"?*"'],
        [verdict, `"<>${noPart}"`],
      ],
      sum,
    );
  const parts = [section, grade].flatMap((column) =>
    column === undefined ? [] : [[column, '"?*"'] as const],
  );
  return `=SUM(${reference(list, sum.column)})${blanksOf(list, parts, sum)}`;
}

/** What a column must say for a row to be added up. */
type Where = readonly [column: string, says: string];

function sumOf(list: PartsList, where: readonly Where[], sum: Sum): string {
  const asked = where.map(([by, says]) => `${reference(list, by)},${says}`);
  const added = `SUMIFS(${[reference(list, sum.column), ...asked].join(',')})`;
  return `=${added}${blanksOf(list, where, sum)}`;
}

/** A row without a quantity is one piece, here as in its check. */
function blanksOf(list: PartsList, where: readonly Where[], { column, counts }: Sum): string {
  if (counts === undefined) return '';
  const asked = [...where, [column, '""'] as const].map(([by, says]) => `${reference(list, by)},${says}`);
  return `+COUNTIFS(${asked.join(',')})`;
}

function otherRowRemarks({ headings, values, area }: PartsList, verdict: string | undefined): string[] {
  const others = otherRowsOf(values, readHeadings(headings), area.row + 1);
  if (verdict !== undefined) return otherRowSentences(others, 'not added up');
  const { qty } = readHeadings(headings).fields;
  const isCounted = ({ row }: OtherRowAt) => typeof values[row - area.row - 1]?.[qty?.at ?? -1] === 'number';
  const totals = others.filter((each) => each.is === 'total' || (each.is === 'work' && isCounted(each)));
  return [
    ...otherRowSentences(
      others.filter((each) => !totals.includes(each)),
      'not added up',
    ),
    ...(totals.length > 0
      ? [
          `The line All counts rows that are no parts too: ${totals.length === 1 ? 'row' : 'rows'} ${rowRuns(totals.map(({ row }) => row))}. For parts only, first add the column ${checkHeadings.verdict} to the list.`,
        ]
      : []),
  ];
}

function blockOf(list: PartsList, title: string, column: string, sums: readonly Sum[]): Content[][] {
  return [
    [title, ...sums.map(({ heading }) => heading)],
    ...namesIn(list, column).map((name): Content[] => [
      name,
      ...sums.map((sum) => ({ formula: sumOf(list, [[column, quoted(name)]], sum) })),
    ]),
  ];
}

/** The different texts of a column beside parts: verdicts worst first, others in the order of the list. */
function namesIn({ headings, values }: PartsList, column: string): string[] {
  const at = headings.indexOf(column);
  const read = readHeadings(headings);
  const names = new Map<string, string>();
  for (const row of values) {
    if (rowKindOf(row, read) !== 'part') continue;
    const cell = row[at] ?? null;
    if (!isBlank(cell) && !names.has(nameKey(cell))) names.set(nameKey(cell), String(cell).trim());
  }
  const order = verdicts as readonly string[];
  return [...names.values()].sort((a, b) => order.indexOf(a) - order.indexOf(b));
}

interface Columns {
  qty?: string | undefined;
  section?: string | undefined;
  grade?: string | undefined;
  press?: string | undefined;
  mass?: string | undefined;
  paint?: string | undefined;
  verdict?: string | undefined;
}

/** The columns of a list by what they hold, by their headings as they stand. */
function columnsOf({ headings }: PartsList): Columns {
  const { fields } = readHeadings(headings);
  const typed = (at: number | undefined) => (at === undefined ? undefined : headings[at]);
  const named = (name: string) => headings.find((heading) => nameKey(heading) === nameKey(name));
  return {
    qty: typed(fields.qty?.at),
    section: typed(fields.section?.at),
    grade: typed(fields.grade?.at),
    // The press that runs the row, where the list shows it: what is typed may be blank.
    press: named(checkHeadings.press) ?? typed(fields.press?.at),
    mass: named(checkHeadings.mass),
    paint: named('Paint area'),
    verdict: named(checkHeadings.verdict),
  };
}

/** A column of a table; characters with a meaning there are escaped. */
function reference({ name }: PartsList, column: string): string {
  return `${name}[${column.replaceAll(/[[\]#'@]/g, "'$&")}]`;
}

/** A text in a formula that SUMIF takes as it stands: no wildcard, no comparison. */
function quoted(name: string): string {
  const plain = name.replaceAll(/[~*?]/g, '~$&').replaceAll('"', '""');
  return `"=${plain}"`;
}
