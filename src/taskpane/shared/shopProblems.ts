import { sentenceInCell } from '../../core/inputError.js';
import type { Shop } from '../../core/shop/readShop.js';
import { pressItems } from '../../core/press/item/pressItem.js';
import { unreadToolText } from '../../core/shop/readTools.js';
import { settingRows } from '../../core/shop/settings.js';
import { nameKey } from '../../core/shop/table.js';
import { type Area, cellOf } from '../../workbook/area.js';
import type { ShopProblem, ShopTable, ShopTablesRead } from './shopState.js';

/** Every cell of the shop that cannot be read, with its place on the sheet. */
export function shopProblems(shop: Shop, tables: ShopTablesRead): ShopProblem[] {
  return [...pressProblems(shop, tables), ...settingProblems(shop, tables), ...listProblems(shop, tables)];
}

function pressProblems(shop: Shop, { presses }: ShopTablesRead): ShopProblem[] {
  return shop.presses.flatMap(({ name, values, problem }) => {
    const whole =
      problem === undefined
        ? []
        : [placed(sentenceInCell(problem), cellAt(presses, undefined, name), problem)];
    const cells = pressItems.flatMap((item) => {
      const value = values[item.key];
      return value?.state === 'bad'
        ? [placed(sentenceInCell(value.failure), cellAt(presses, item.name, name), value.failure)]
        : [];
    });
    return [...whole, ...cells];
  });
}

function settingProblems(shop: Shop, { settings }: ShopTablesRead): ShopProblem[] {
  return Object.entries(shop.settings.bad).map(([key, failure]) => {
    const row = settingRows[key as keyof typeof settingRows].name;
    return placed(sentenceInCell(failure), settings && cellAt(settings, row, 'Value'), failure);
  });
}

function listProblems(shop: Shop, { tools, grades }: ShopTablesRead): ShopProblem[] {
  const ofTools = (shop.tools?.problems ?? []).map((unread) =>
    placed(unreadToolText(unread), tools && cellOf(tools.area, unread.row, 0)),
  );
  const ofGrades = shop.ownGrades.flatMap(({ name, problem }) =>
    problem ? [placed(sentenceInCell(problem), grades && cellAt(grades, name, 'Grade'), problem)] : [],
  );
  return [...ofTools, ...ofGrades];
}

function placed(message: string, area: Area | undefined, refused?: ShopProblem['refused']): ShopProblem {
  return { message, ...(area && { area }), ...(refused && { refused }) };
}

/** The cell in the row that begins with a text and under a heading; the heading itself without a row. */
function cellAt({ area, values }: ShopTable, row: string | undefined, heading: string): Area | undefined {
  const column = values[0]?.findIndex((cell) => nameKey(cell) === nameKey(heading)) ?? -1;
  const at =
    row === undefined ? 0 : values.findIndex((cells) => cells.some((cell) => nameKey(cell) === nameKey(row)));
  return column < 0 || at < 0 ? undefined : cellOf(area, at, column);
}
