import '../support/engineOnNode.js';
import { describe, expect, it } from 'vitest';
import { openGrid } from '../support/gridUnderTest.js';

const area = { sheet: 'Parts', row: 2, column: 0, rows: 3, columns: 4 };
const list = [
  ['Mark', 'Section', 'Length', 'Hole'],
  ['A', 'PL1/2X4', '10 in', '13/16 in'],
  ['B', 'PL1/2X4', '12 in', '13/16 in'],
];

async function listInGrid() {
  const { workbook, book, hands } = await openGrid();
  await hands.type(area, list);
  const verdicts = { ...area, row: 3, rows: 2, column: 4, columns: 1 };
  const formula = '=COLUMNS(List[[#Headers],[Mark]:[Hole]])';
  const plan = await workbook.plan([
    { kind: 'cells', area: { ...area, column: 4, columns: 1, rows: 1 }, contents: [['Verdict']] },
    { kind: 'table', name: 'List', area: { ...area, columns: 5 } },
    { kind: 'cells', area: verdicts, contents: [[{ formula }], [{ formula }]] },
  ]);
  await workbook.write(plan);
  const sheetId = book.sheetIdOf('Parts') ?? '';
  const shown = (row: number) => Array.from({ length: 6 }, (_, col) => book.value({ sheetId, row, col }));
  const insert = (position: 'before' | 'after', base: number) =>
    book.model.dispatch('ADD_COLUMNS_ROWS', {
      ...{ sheetId, sheetName: 'Parts', dimension: 'COL', base, position, quantity: 1 },
    } as never);
  return { book, shown, insert };
}

describe('a column inserted into a list', () => {
  it.each([
    ['left of Length', 'before', 2],
    ['right of Section', 'after', 1],
  ] as const)('%s gets a heading of its own, and the others keep theirs', async (_, position, base) => {
    const { book, shown, insert } = await listInGrid();
    insert(position, base);
    expect(shown(2)).toEqual(['Mark', 'Section', 'Column3', 'Length', 'Hole', 'Verdict']);
    expect(shown(3).slice(2, 5)).toEqual([null, '10 in', '13/16 in']);
    expect(book.tables.find('List')?.columns).toEqual(shown(2));
    expect(shown(3)[5]).toBe(5);
  });
});
