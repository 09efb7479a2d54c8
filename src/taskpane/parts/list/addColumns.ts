import { isBlank } from '../../../core/quantity/cellValue.js';
import type { RowItem } from '../../../core/row/rowItem.js';
import { columnLetters } from '../../../sheet/address.js';
import type { Content } from '../../../workbook/content.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Step } from '../../../workbook/step.js';
import type { Proposal } from '../../shared/change/proposal.js';
import { checkHeading, formatOf, furtherItems, widthOf } from './checkColumn.js';
import { type CheckedColumns, listCheckFormula, lookUpFormula, rowCheckFormula } from './checkFormulas.js';
import { inputSpan, type ListRead } from './listRead.js';
import type { ColumnMatch } from './columnMatch.js';
import { lookUp, type SheetChecks } from './sheetChecks.js';

const quotedItems = /"([^"]*)"\)$/;

/** What the checks of a list show, item by item, as they are asked for in its formulas. */
function itemsOf({ columns, whole }: SheetChecks): string[] {
  const formulas = whole ? [whole.formula] : columns.map(({ model }) => model);
  return formulas.flatMap((formula) => (quotedItems.exec(formula)?.[1] ?? '').split(/, ?/));
}

/** What a checked list does not show yet. */
export function itemsToAdd(checks: SheetChecks): typeof furtherItems {
  const shown = itemsOf(checks);
  return furtherItems.filter(({ item }) => !shown.includes(item));
}

/** What adding more columns to a list that is checked on the sheet writes, or why it cannot be done. */
export async function addColumns(
  workbook: Workbook,
  list: ListRead,
  matches: readonly ColumnMatch[],
  chosen: readonly RowItem[],
): Promise<Proposal | string> {
  const { checks, source } = list;
  const span = inputSpan(matches, checks);
  if (!checks || !source.table || !span) return 'The checks of this list are not in a table of the sheet.';
  const read = { table: source.table.name, first: span.first.heading, last: span.last.heading };
  const items = itemsToAdd(checks).flatMap(({ item }) => (chosen.includes(item) ? item : []));
  const looked = checks.whole ? await lookedUp(workbook, checks, read, items) : undefined;
  if (typeof looked === 'string') return looked;
  const headings = list.headings.map((heading) => String(heading ?? ''));
  const columns = items.map((item, at): Step => {
    const formula = looked?.formulas[at] ?? rowCheckFormula(read, item);
    return {
      kind: 'column',
      table: read.table,
      heading: checkHeading(item, headings),
      contents: list.rows.map((): Content => ({ formula })),
      format: formatOf(item),
      width: widthOf(item),
    };
  });
  return { title: 'Add columns', steps: [...(looked ? [looked.step] : []), ...columns] };
}

/** The one formula of the list with more items, and where they are looked up. */
async function lookedUp(
  workbook: Workbook,
  checks: SheetChecks,
  read: CheckedColumns,
  items: readonly RowItem[],
): Promise<{ step: Step; formulas: string[] } | string> {
  const { whole, columns } = checks;
  const row = Number(columns.map(({ model }) => lookUp.exec(model)?.[4]).find((each) => each !== undefined));
  if (!whole || !row) return 'The checks of this list cannot be read.';
  const { area } = whole;
  const shown = itemsOf(checks);
  const beside = { ...area, column: area.column + shown.length, columns: items.length };
  const [held] = await workbook.read([beside], ['values']);
  if (held?.values.some((cells) => cells.some((cell) => !isBlank(cell))))
    return `The cells right of the checks on the sheet ${area.sheet} are filled. Make room for ${items.length} columns there first.`;
  const formula = listCheckFormula(read, [...shown, ...items].join(', '));
  return {
    step: { kind: 'cells', area, contents: [[{ formula }]] },
    formulas: items.map((_, at) =>
      lookUpFormula(read, { sheet: area.sheet, letter: columnLetters(beside.column + at), row }),
    ),
  };
}
