import { describe, expect, it } from 'vitest';
import { type Shop, type ShopTables, readShop } from '../../../src/core/shop/readShop.js';
import { waitingRows } from '../../../src/taskpane/app/waitingRows.js';
import { shopProblems } from '../../../src/taskpane/shared/shopProblems.js';
import { bayA, bayB, pressTable, settingTable, shopTables } from '../../support/sampleShop.js';
import { MemoryWorkbook } from '../support/memoryWorkbook.js';

const area = { sheet: 'Parts', row: 0, column: 0, rows: 5, columns: 7 };
const own = [
  ['Grade', 'Tensile min', 'Tensile upper', 'Shear', 'Density', 'Source'],
  ['Bay plate', 'abc', '75 ksi', null, null, 'mill certificate'],
];

/** How many of four rows wait on the first cell that cannot be read: two on Bay B, of own and known grade; one on Bay A; one on any. */
async function waiting(changes: Partial<ShopTables>): Promise<number> {
  const tables = shopTables({ presses: pressTable({ 'Bay A': bayA, 'Bay B': bayB }), ...changes });
  const shop: Shop = readShop(tables);
  const workbook = new MemoryWorkbook('Parts').type('Parts', 0, 0, [
    ['Section', 'Length', 'Grade', 'Hole', 'Edge', 'End', 'Press'],
    ['PL3/8X6', 12, 'A36', '13/16', 2, 2, 'Bay B'],
    ['PL3/8X6', 12, 'Bay plate', '13/16', 2, 2, 'Bay B'],
    ['PL3/8X6', 12, 'A36', '13/16', 2, 2, 'Bay A'],
    ['PL3/8X6', 12, 'A36', '13/16', 2, 2, null],
  ]);
  const presses = { area, values: tables.presses.map((row) => [...row]) };
  const [problem] = shopProblems(shop, { presses });
  if (!problem?.refused) throw new Error('the shop has no cell that rows wait on');
  return waitingRows(workbook, shop, [{ area }], problem.refused);
}

describe('the rows that wait on a cell of the shop', () => {
  it('are those on the press it belongs to, not those that another press runs', async () => {
    const broken = pressTable({ 'Bay A': bayA, 'Bay B': { ...bayB, 'Punch throat': 'abc' } });
    const good = [own[0] ?? [], ['Bay plate', '60 ksi', '75 ksi', null, null, 'mill certificate']];
    expect(await waiting({ presses: broken, grades: good })).toBe(2);
  });

  it('are all that are punched where a setting cannot be read', async () => {
    expect(await waiting({ settings: settingTable({ Units: 'in', 'Shear ratio': 'abc' }) })).toBe(3);
  });

  it('are those of a grade that cannot be read', async () => {
    expect(await waiting({ grades: own })).toBe(1);
  });
});
