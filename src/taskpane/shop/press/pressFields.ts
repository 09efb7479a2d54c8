import type { Fields } from './mergeFields.js';
import { sentenceInCell } from '../../../core/inputError.js';
import { type PressItem, type PressItemKey, pressItems } from '../../../core/press/item/pressItem.js';
import { readPressValue } from '../../../core/press/readPressValue.js';
import type { CellValue } from '../../../core/quantity/cellValue.js';
import type { LengthUnit } from '../../../core/quantity/units.js';
import { nameKey } from '../../../core/shop/table.js';
import type { Step } from '../../../workbook/step.js';
import type { ShopTable } from '../../shared/shopState.js';
import { starterUnit } from '../sheet/starter.js';
import { columnAt, rowAt, writeCell } from '../sheet/tableCells.js';

/** What the cells of one press say, by the names of the items, as text. */
export function fieldsOf(table: ShopTable, press: string): Record<string, string> {
  const column = columnAt(table, press);
  return Object.fromEntries(
    pressItems.map(({ name }) => [
      name,
      String(table.values[rowAt(table, 'Item', name)]?.[column] ?? '').trim(),
    ]),
  );
}

/** The text of the Unit column beside an item. */
export function unitOf(table: ShopTable, item: PressItem): CellValue {
  const row = rowAt(table, 'Item', item.name);
  if (row >= 0) return table.values[row]?.[columnAt(table, 'Unit')] ?? null;
  return starterUnit(item.kind, unitOfTable(table));
}

/** What lengths of the table are in, by its own Unit column: a row that is added goes with the others. */
export function unitOfTable(table: ShopTable): LengthUnit {
  const column = columnAt(table, 'Unit');
  return table.values.some((row) => nameKey(row[column]) === 'mm') ? 'mm' : 'in';
}

/** The sentence that says why a field cannot be read; undefined for a good one. */
export function problemOf(
  text: string,
  item: PressItem,
  table: ShopTable,
  press: string,
  unit: LengthUnit,
): string | undefined {
  const name = press || 'New press';
  const read = readPressValue(text, unitOf(table, item), item, name, unit);
  if (read.state !== 'bad') return undefined;
  // Beside its field a sentence need not say which cell of the sheet it is about.
  const place = `Presses, ${name}, ${item.name}: `;
  const sentence = sentenceInCell(read.failure);
  return sentence.startsWith(place) ? sentence.slice(place.length) : sentence;
}

/** Steps that write the changed fields of a press, each into its own cell; `missing` names items without a row. */
export function changedCells(
  table: ShopTable,
  press: string,
  before: Fields,
  after: Fields,
): { steps: Step[]; missing: Record<string, string> } {
  const column = columnAt(table, press);
  const steps: Step[] = [];
  const missing: Record<string, string> = {};
  for (const { name } of pressItems) {
    const text = String(after[name] ?? '');
    if (text === String(before[name] ?? '')) continue;
    const row = rowAt(table, 'Item', name);
    if (row < 0) missing[name] = text;
    else steps.push(writeCell(table, row, column, text));
  }
  return { steps, missing };
}

export function itemOf(key: PressItemKey): PressItem {
  const item = pressItems.find((each) => each.key === key);
  if (!item) throw new Error(`no press item ${key}`);
  return item;
}
