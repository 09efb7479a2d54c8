import type { CellValue } from '../../../core/quantity/cellValue.js';
import { nameKey } from '../../../core/shop/table.js';
import type { Workbook } from '../../../workbook/port.js';
import type { Step } from '../../../workbook/step.js';
import type { ShopTable } from '../../shared/shopState.js';
import { columnAt, rowAt } from './tableCells.js';
import { isStarter } from './starter.js';

/** The presses of a table that are invented, by name. */
export function inventedPresses(table: ShopTable): string[] {
  const [headings = []] = table.values;
  const names = headings.map(String).filter((name) => !['item', 'unit', ''].includes(nameKey(name)));
  return names.filter((name) => {
    const column = columnAt(table, name);
    const cell = (item: string) => table.values[rowAt(table, 'Item', item)]?.[column] ?? null;
    return isStarter(name, cell);
  });
}

/**
 * Steps that put a press in the place of the first invented one and take the other invented ones out: those right of
 * them move up, and the table ends earlier. Refuses by returning why.
 */
export async function replaceInvented(
  workbook: Workbook,
  table: ShopTable,
  heading: string,
  contents: readonly CellValue[],
): Promise<Step[] | string> {
  const { area, table: name } = table;
  if (name === undefined)
    return 'These cells are no table: change the presses on the sheet and the SHOP formula with them.';
  const columns = inventedPresses(table).map((press) => columnAt(table, press));
  const [first] = columns;
  if (first === undefined) return 'No press of the table is invented.';
  const place = { ...area, column: area.column + first, columns: area.columns - first };
  const [held] = await workbook.read([place], ['values', 'formulas', 'formats']);
  if (!held) return 'The cells of the table could not be read: try again.';
  if (held.formulas.some((row) => row.some((formula) => formula !== null)))
    return 'The columns of the presses hold formulas, which would lose their cells: change the presses on the sheet.';
  const own = [heading, ...contents];
  const kept = held.values[0]?.flatMap((_, at) => (columns.includes(first + at) ? [] : at)) ?? [];
  const width = 1 + kept.length;
  const moved = <Item>(rows: readonly (readonly Item[])[], ofOwn: (row: number) => Item, blank: Item) =>
    rows.map((row, down) =>
      row.map((_, across) => {
        if (across === 0) return ofOwn(down);
        const from = kept[across - 1];
        return across < width && from !== undefined ? (row[from] ?? blank) : blank;
      }),
    );
  return [
    { kind: 'resize', table: name, area: { ...area, columns: first + width } },
    {
      kind: 'cells',
      area: place,
      contents: moved<CellValue>(held.values, (down) => own[down] ?? null, null),
      formats: moved<string>(held.formats, () => '@', 'General'),
    },
  ];
}
