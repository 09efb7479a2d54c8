import { sameName } from '../../sheet/names.js';
import { InputError } from '../../core/inputError.js';
import { readShop } from '../../core/shop/readShop.js';
import { readStamp } from '../../core/shop/stamp.js';
import { overlap } from '../../workbook/area.js';
import type { CellsRead, Place } from '../../workbook/reading.js';
import type { Workbook } from '../../workbook/port.js';
import { WorkbookError } from '../../workbook/workbookError.js';
import { listIn, readList } from './formulaList.js';
import { shopPlaces } from './shopPlaces.js';
import { shopProblems } from './shopProblems.js';
import { type ShopState, type ShopTable, shopTableNames, type ShopTablesRead } from './shopState.js';

export const stampName = 'ShopStamp';

/** Reads the shop cell, the tables its formula names, and the shop they hold. */
export async function readShopState(workbook: Workbook): Promise<ShopState> {
  const names = await workbook.names();
  if (!names.some(({ name }) => sameName(name, stampName))) return { kind: 'none' };
  const [stamp] = await workbook.read([{ name: stampName }], ['values', 'formulas']);
  if (!stamp) return { kind: 'none' };
  const { area: stampArea } = stamp;
  try {
    const kept = await keptFormula(workbook, stamp);
    const formula = stamp.formulas[0]?.[0] ?? kept?.formula ?? '';
    const tables = await readTables(workbook, shopPlaces(formula, stampArea.sheet));
    const shop = readShop({
      presses: tables.presses.values,
      tools: tables.tools?.values,
      grades: tables.grades?.values,
      settings: tables.settings?.values,
    });
    const problems = shopProblems(shop, tables);
    const shown = String(stamp.values[0]?.[0] ?? '');
    return { kind: 'ready', shop, tables, stampArea, shown, problems, ...(kept && { keptOn: kept.sheet }) };
  } catch (error) {
    if (error instanceof InputError || error instanceof WorkbookError)
      return { kind: 'broken', message: error.message, area: stampArea };
    throw error;
  }
}

/** The formula that a values copy keeps for its shop cell, and the sheet it keeps it on. */
async function keptFormula(workbook: Workbook, { area, formulas, values }: CellsRead<'values' | 'formulas'>) {
  const isCopy = formulas[0]?.[0] == null && readStamp(String(values[0]?.[0] ?? '')) !== undefined;
  const sheet = isCopy ? await listIn(workbook) : undefined;
  if (sheet === undefined) return undefined;
  const [list] = await workbook.read([{ usedOf: sheet }], ['values']);
  const kept = readList(list?.values ?? []).find(({ area: place }) => overlap(place, area));
  return kept && { sheet, formula: kept.formula };
}

async function readTables(workbook: Workbook, places: (Place | undefined)[]): Promise<ShopTablesRead> {
  const asked = places.flatMap((place) => (place ? partsOf(place) : []));
  const answers = await workbook.read(asked, ['values']);
  const read: Partial<Record<(typeof shopTableNames)[number], ShopTable>> = {};
  places.slice(0, shopTableNames.length).forEach((place, at) => {
    const key = shopTableNames[at];
    if (!place || !key) return;
    const [first, ...more] = answers.splice(0, partsOf(place).length);
    if (!first) return;
    const values = [first, ...more].flatMap((each) => each.values);
    read[key] = {
      area: { ...first.area, rows: values.length },
      values,
      ...('table' in place ? { table: place.table } : {}),
    };
  });
  const { presses } = read;
  if (!presses) throw new WorkbookError('missing', 'The SHOP formula names no table of presses.');
  return { ...read, presses };
}

/** The rows a SHOP formula reads of a table: its headings and its data, without a total row. */
function partsOf(place: Place): Place[] {
  return 'table' in place
    ? [
        { table: place.table, part: 'headings' },
        { table: place.table, part: 'data' },
      ]
    : [place];
}
