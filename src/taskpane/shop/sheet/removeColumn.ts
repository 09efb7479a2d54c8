import type { Workbook } from '../../../workbook/port.js';
import type { Step } from '../../../workbook/step.js';
import type { ShopTable } from '../../shared/shopState.js';

/**
 * Steps that take a column out of a table: those right of it move up to it, and the table ends a column earlier, so
 * that one step takes it all back. Refuses by returning why.
 */
export async function removeColumn(
  workbook: Workbook,
  { area, table }: ShopTable,
  column: number,
): Promise<Step[] | string> {
  if (table === undefined)
    return 'These cells are no table: remove the column on the sheet and narrow the SHOP formula.';
  const place = { ...area, column: area.column + column, columns: area.columns - column };
  const [held] = await workbook.read([place], ['values', 'formulas', 'formats']);
  if (!held) return 'The cells of the table could not be read: try again.';
  if (held.formulas.some((row) => row.slice(1).some((formula) => formula !== null)))
    return 'Columns right of it hold formulas, which would lose their cells: delete the column on the sheet.';
  const moved = <Item>(rows: readonly (readonly Item[])[], last: (row: readonly Item[]) => Item) =>
    rows.map((row) => [...row.slice(1), last(row)]);
  return [
    { kind: 'resize', table, area: { ...area, columns: area.columns - 1 } },
    {
      kind: 'cells',
      area: place,
      contents: moved(held.values, () => null),
      formats: moved(held.formats, (row) => row.at(-1) ?? 'General'),
    },
  ];
}
