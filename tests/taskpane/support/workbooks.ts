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

const barHeadings = ['Mark', 'Qty', 'Section', 'Grade', 'Length', 'Miter left', 'Miter right', 'Long side'];

/** A pipe rack and its stair: angles with miters, flats, pipe, a channel, and a plate, which is no bar. */
const barParts: Content[][] = [
  ['RA1', 14, 'L3X3X1/4', 'A36', '4\'-2"', '', '', ''],
  ['RA2', 9, 'L 3 x 3 x .25', 'A36', '31-1/2', 45, 45, 'heel'],
  ['RA3', 22, 'L2X2X3/16', 'A36', '18-3/4', 30, '', 'heel'],
  ['RA4', 2, 'L3X3X1/4', 'A36', '42\'-0"', '', '', ''],
  ['FB1', 40, 'FB 1/4x2', 'A36', '11-1/4', '', '', ''],
  ['FB2', 16, 'FB 1/4x2', 'A36', '2\'-9"', 45, 45, 'bottom'],
  ['FB3', 12, 'FB 3/8x4', 'A36', '22', '', '', ''],
  ['PI1', 8, 'PIPE 2 STD', 'A53', '6\'-3"', 45, 45, 'bottom'],
  ['PI2', 20, 'PIPE 2 STD', 'A53', '3\'-6"', '', '', ''],
  ['CH1', 6, 'C6X8.2', 'A36', '9\'-11"', '', '', ''],
  ['RB1', 30, 'RB 3/4', 'A36', '27', '', '', ''],
  ['PL1', 8, 'PL1/2X8', 'A36', '8', '', '', ''],
];

const stockCells: Content[][] = [
  ['Section', 'Grade', 'Length', 'Price', 'Available'],
  ['L3X3X1/4', 'A36', '20 ft', '31.50', ''],
  ['L3X3X1/4', 'A36', '40 ft', '59.00', '1'],
  ['L2X2X3/16', '', '20 ft', '', ''],
  ['FB 1/4x2', 'A36', '20 ft', '', ''],
  ['PIPE 2 STD', '', '21 ft', '', ''],
];

/** Writes cells and makes them a table. */
async function typeTable(
  workbook: MemoryWorkbook,
  name: string,
  sheet: string,
  cells: Content[][],
): Promise<void> {
  const used = workbook.memory.sheets.has(sheet);
  const area = { sheet, row: 2, column: 20, rows: cells.length, columns: cells[0]?.length ?? 0 };
  const steps = [
    ...(used ? [] : [{ kind: 'sheet', name: sheet } as const]),
    { kind: 'cells', area, contents: cells, formats: cells.map((row) => row.map(() => '@')) } as const,
    { kind: 'table', name, area } as const,
  ];
  await workbook.write(await workbook.plan(steps), { confirmed: true });
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
  if (kind.includes('bars')) await typeTable(workbook, 'Rack', 'Rack', [barHeadings, ...barParts]);
  if (kind.includes('stock')) await typeTable(workbook, 'Stock', 'Shop', stockCells);
  if (kind.includes('broken')) workbook.type('Shop', 13, 3, [['abc']]);
}
