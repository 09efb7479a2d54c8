import type { LengthUnit } from '../../../core/quantity/units.js';
import { readShop, type Shop } from '../../../core/shop/readShop.js';
import type { ShopTable, ShopTablesRead } from '../../shared/shopState.js';
import { newPressCells, type NewPressAnswers } from '../press/newPressAnswers.js';
import { starterPresses, starterSettings } from '../sheet/starter.js';
import { columnAt } from '../sheet/tableCells.js';

/** A table of presses without a press, for what is typed before there is a sheet. */
export function tableWithoutPresses(unit: LengthUnit): ShopTable {
  const values = starterPresses(unit).map((row) => row.slice(0, 2));
  return { area: { sheet: '', row: 0, column: 0, rows: values.length, columns: 2 }, values };
}

const unnamed = 'Your press';

/** A shop of the one press that is being typed, with the other tables of the shop where there is one. */
export function ownShop(
  answers: NewPressAnswers,
  table: ShopTable,
  others: { unit: LengthUnit; tables?: ShopTablesRead },
): Shop {
  const { tables, unit } = others;
  const [item, ofUnit] = [columnAt(table, 'Item'), columnAt(table, 'Unit')];
  const own = newPressCells(answers, table);
  const presses = table.values.map((row, at) => [
    row[item] ?? null,
    row[ofUnit] ?? null,
    at === 0 ? answers.name.trim() || unnamed : (own[at - 1] ?? null),
  ]);
  return readShop({
    presses,
    tools: tables?.tools?.values,
    grades: tables?.grades?.values,
    settings: tables ? tables.settings?.values : starterSettings(unit),
  });
}
