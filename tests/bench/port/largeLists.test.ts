import { expect, it } from 'vitest';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import { openBook } from '../../../src/bench/open/openBook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import type { Content } from '../../../src/workbook/content.js';
import { functions, openExample } from '../support/openExample.js';

const rows = 2000;

it('checks a list of 2,000 rows in its own column and in one call on another sheet, saves and opens it', async () => {
  const open = openExample();
  const port = new GridWorkbook(open.book);
  const [example] = await port.read([{ table: 'Parts' }], ['values']);
  const [headings = [], ...parts] = (example?.values ?? []).map((row) => row.slice(0, 17));
  const list = Array.from({ length: rows }, (_, row) => parts[row % parts.length] ?? []);
  const area = { sheet: 'Big', row: 0, column: 0, rows: rows + 1, columns: headings.length };
  const rowCheck =
    '=TONROW.ROWCHECK(BigList[[#Headers],[Mark]:[Press]],BigList[@[Mark]:[Press]],ShopStamp,"verdict")';
  const listCheck = '=TONROW.LISTCHECK(BigList[[#All],[Mark]:[Press]],ShopStamp,"verdict")';
  await port.write(
    await port.plan([
      { kind: 'sheet', name: 'Checks' },
      { kind: 'sheet', name: 'Big' },
      { kind: 'cells', area, contents: [headings, ...list] },
      { kind: 'table', name: 'BigList', area },
    ]),
  );
  await port.write(
    await port.plan([
      {
        kind: 'column',
        table: 'BigList',
        heading: 'Check',
        contents: list.map(() => ({ formula: rowCheck })),
      },
      {
        kind: 'cells',
        area: { sheet: 'Checks', row: 0, column: 0, rows: 1, columns: 1 },
        contents: [[{ formula: listCheck } satisfies Content]],
      },
    ]),
  );
  const again = new GridWorkbook(openBook(saveBook(open).bytes, functions).book);
  for (const workbook of [port, again]) {
    const [own, spilled] = await workbook.read(
      [{ table: 'BigList', part: 'data' }, { usedOf: 'Checks' }],
      ['values', 'formulas'],
    );
    const verdicts = own?.values.map((row) => row[17]);
    expect(spilled?.area.rows).toBe(rows + 1);
    expect(spilled?.values.slice(1).map(([verdict]) => verdict)).toEqual(verdicts);
    expect(new Set(verdicts).size).toBeGreaterThan(5);
    expect(own?.formulas[rows - 1]?.[17]?.replace('[[#This Row],[Mark]:[Press]]', '[@[Mark]:[Press]]')).toBe(
      rowCheck,
    );
    expect(spilled?.formulas[0]?.[0]).toBe(listCheck);
  }
});
