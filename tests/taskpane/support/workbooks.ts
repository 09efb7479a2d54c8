import { addShopSheet } from '../../../src/taskpane/shop/sheet/addShopSheet.js';
import type { Content } from '../../../src/workbook/content.js';
import type { MemoryWorkbook } from './memoryWorkbook.js';

export const partsHeadings = [
  'Pc mark',
  'Quantity',
  'Profile',
  'Matl',
  'Len',
  'Hole dia',
  'No. of holes',
  'Bolt size',
  'Edge',
  'End',
  'Remarks',
];

/** A catwalk and handrail list, repeated to a number of rows, with headings of its own kind. */
export function partsList(rows: number): Content[][] {
  const parts: Content[][] = [
    ['GP1', 12, 'PL3/8X8', 'A36', '10-1/2', '13/16', '1 each end', '3/4', '4', '1-1/2', ''],
    ['CL2', 24, 'L3X3X3/8', 'A36', '5 1/2"', '13/16', '1 each end', '3/4', '1-1/4', '7/8', ''],
    ['CL1', 48, 'L3X3X1/4', 'A36', '6', '13/16', '1 each end', '3/4', '1-1/4', '1-1/2', ''],
    ['BK4', 6, 'PL5/8X4', 'A36', '8', '9/16', '1 each end', '1/2', '2', '2', 'hatch'],
    ['BK8', 10, 'PL1/4X3', 'A36', '6', 45724, '1 each end', '', '1-1/2', '1-1/2', ''],
    ['TP1', 10, 'FB 1/4x4', 'A36', "18'-3", '9/16', '1 each end', '1/2', '2', '1-1/2', ''],
    ['ST2', 4, 'FB 1/2x4', 'A36', "24'-0", '', '', '', '', '', ''],
    ['XX1', 1, 'PL3/8 by 6', 'A36', '8', '', '', '', '', '', 'sketch missing'],
  ];
  return Array.from({ length: rows }, (_, at) => {
    const part = parts[at % parts.length] ?? [];
    return [`${String(part[0])}-${Math.floor(at / parts.length) + 1}`, ...part.slice(1)];
  });
}

/** The workbooks of the pane's pages. */
export async function fillWorkbook(workbook: MemoryWorkbook, kind: string): Promise<void> {
  if (kind.includes('shop')) {
    const { steps } = await addShopSheet(workbook, 'in');
    await workbook.write(await workbook.plan(steps), { confirmed: true });
  }
  const rows = Number(/list(\d+)/.exec(kind)?.[1] ?? 0);
  if (rows > 0) {
    workbook.type('Sheet1', 0, 0, [['Catwalk and handrail package, grain-handling tower'], ['']]);
    workbook.type('Sheet1', 2, 0, [partsHeadings, ...partsList(rows)]);
    workbook.select({ sheet: 'Sheet1', row: 4, column: 1, rows: 1, columns: 1 });
  }
  if (kind.includes('clips')) {
    workbook.type('Sheet1', 0, 0, [
      ['Mark', 'Section', 'Grade', 'Length', 'Press'],
      ['C1', 'L3X3X1/4', 'A36', '12', 'Bay A'],
      ['C2', 'PL3/8X6', 'A36', '12', 'Bay A'],
      ['C3', 'L3X3X1/4', 'A36', '12', 'Bay A'],
    ]);
    workbook.select({ sheet: 'Sheet1', row: 0, column: 0, rows: 1, columns: 1 });
  }
  if (kind.includes('broken')) workbook.type('Shop', 13, 3, [['abc']]);
}
