import { describe, expect, it } from 'vitest';
import { freeListName, listIn, readList } from '../../../src/taskpane/shared/formulaList.js';
import { listHeadings } from '../../../src/sheet/keptFormulas/formulaList.js';
import { hostFormula, sameFormula } from '../../../src/sheet/formula/hostFormula.js';
import { foundFormulas, goesForShop } from '../../../src/taskpane/handOff/ourFormulas.js';
import { bringBack, changedValues, stepsToValues } from '../../../src/taskpane/handOff/ownValues.js';
import { writingSteps } from '../../../src/taskpane/handOff/areasOfCells.js';
import { isFormula } from '../../../src/workbook/content.js';
import type { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { cell, listRow, parts, quoteBook, verdictColumn } from '../steps/quoteBook.js';

const formulasOf = (book: MemoryWorkbook) =>
  Object.fromEntries(
    [...book.memory.sheets.keys()].map((sheet) => [
      sheet,
      [...book.memory.cellsOf(sheet)].flatMap(([at, { content }]) =>
        isFormula(content) ? `${at} ${content.formula}` : [],
      ),
    ]),
  );
const valuesOf = (book: MemoryWorkbook) =>
  ['Quote', 'Shop', 'List check'].map((sheet) =>
    book.memory.rows(book.memory.used(sheet), ({ value }) => value),
  );

async function frozen(): Promise<{
  book: MemoryWorkbook;
  before: ReturnType<typeof formulasOf>;
  values: ReturnType<typeof valuesOf>;
}> {
  const book = quoteBook();
  book.type('Quote', 14, 1, [[{ formula: '=SUM(C6:C9)' }]]);
  const [before, values] = [formulasOf(book), valuesOf(book)];
  const found = await foundFormulas(book, goesForShop);
  await book.write(await book.plan(await stepsToValues(book, found, { listed: true })), { confirmed: true });
  expect(await changedValues(book, found)).toEqual([]);
  return { book, before, values };
}

describe('our formulas turned into values here', () => {
  it('leave every cell as it showed, and only formulas that are not ours', async () => {
    const { book, values } = await frozen();
    expect(valuesOf(book)).toEqual(values);
    expect(Object.values(formulasOf(book)).flat()).toEqual(['14,1 =SUM(C6:C9)']);
  });

  it('are kept on a sheet of their own: where they stood, as text, with the cells they filled and their value', async () => {
    const { book } = await frozen();
    const rows = book.memory.rows(book.memory.used('Tonrow formulas'), ({ content }) => content);
    expect(rows[0]).toEqual(listHeadings);
    expect(rows).toHaveLength(1 + 3 * parts.length + 3);
    expect(rows.map((row) => row.slice(0, 5))).toContainEqual([
      'Quote',
      'E13',
      '=TONROW.PUNCHFORCE(B13,C13,D13,ShopStamp)',
      null,
      23.9,
    ]);
    const list = rows.find(([sheet]) => sheet === 'List check');
    expect(list?.[3]).toBe(`t="array" ref="A3:B${3 + parts.length}"`);
  });

  it('come back from there, each identical, and the list is empty then', async () => {
    const { book, before, values } = await frozen();
    const list = await listIn(book);
    expect(list).toBe('Tonrow formulas');
    const back = await bringBack(book, list ?? '');
    expect(back).toMatchObject({ count: 3 * parts.length + 3, edited: [] });
    await book.write(await book.plan(back.steps), { confirmed: true });
    expect(await back.verify()).toEqual([]);
    const { 'Tonrow formulas': left, ...after } = formulasOf(book);
    const sorted = (formulas: Record<string, string[]>) =>
      Object.entries(formulas).map(([name, all]) => [name, [...all].sort()]);
    expect(sorted(after)).toEqual(sorted(before));
    expect(left).toEqual([]);
    expect(valuesOf(book)).toEqual(values);
    expect(await listIn(book)).toBeUndefined();
  });

  it('tell which cells were edited meanwhile, before anything is written', async () => {
    const { book } = await frozen();
    book.type('Quote', listRow + 1, verdictColumn, [['my own word']]);
    expect((await bringBack(book, 'Tonrow formulas')).edited).toEqual(['Quote!N6']);
  });

  it('follow a row that moved, or are refused by name: never a formula in a wrong row', async () => {
    const { book, before } = await frozen();
    const used = book.memory.used('Quote');
    const rows = book.memory.rows({ ...used, row: listRow + 1, rows: 2 }, ({ content }) => content);
    book.type('Quote', listRow + 1, used.column, [...rows].reverse());
    const back = await bringBack(book, 'Tonrow formulas');
    expect(back.moved).toBeGreaterThan(0);
    await book.write(await book.plan(back.steps), { confirmed: true });
    expect(await back.verify()).toEqual([]);
    const after = formulasOf(book);
    expect(after['Quote']?.length).toBe(before['Quote']?.length);
    expect(valuesOf(book)[0]?.[listRow + 1 - used.row]?.[0]).toBe(rows[1]?.[0]);
  });

  it('are refused where a mark that was typed over leaves a row unknown', async () => {
    const { book } = await frozen();
    const used = book.memory.used('Quote');
    book.type('Quote', listRow + 1, used.column, [['Z9', 'FB 9x9']]);
    await expect(bringBack(book, 'Tonrow formulas')).rejects.toThrow(
      /^Nothing was brought back: the row of /,
    );
  });

  it('tell which formulas came back otherwise', async () => {
    const { book } = await frozen();
    const back = await bringBack(book, 'Tonrow formulas');
    await book.write(await book.plan(back.steps), { confirmed: true });
    book.type('Quote', 12, 4, [[{ formula: '=TONROW.PUNCHFORCE(B13,C13,"S355",ShopStamp)' }]]);
    expect(await back.verify()).toEqual(['Quote!E13']);
  });

  it('do not count where their text is text', async () => {
    const book = quoteBook();
    book.type('Quote', 30, 0, [['=TONROW.HOLEMIN(A1)'], [{ formula: '="TONROW.HOLEMIN("&A1' }]]);
    const found = await foundFormulas(book, goesForShop);
    expect(found.filter(({ area }) => area.row >= 30)).toEqual([]);
  });

  it('tell where a cell does not show what it showed', async () => {
    const book = quoteBook();
    const found = await foundFormulas(book, goesForShop);
    await book.write(await book.plan(await stepsToValues(book, found, { listed: true })), {
      confirmed: true,
    });
    book.type('Quote', 12, 4, [[1]]);
    expect(await changedValues(book, found)).toEqual(['Quote!E13']);
  });

  it('stop when told to', async () => {
    const aborter = new AbortController();
    const progress = () => aborter.abort();
    await expect(
      foundFormulas(quoteBook(), goesForShop, { signal: aborter.signal, progress }),
    ).rejects.toThrow();
  });
});

describe('every formula turned into a value', () => {
  it('leaves out the sheets that a customer does not get', async () => {
    const book = quoteBook();
    const found = await foundFormulas(book, (_, sheet) => sheet !== 'Shop');
    await book.write(await book.plan(await stepsToValues(book, found, { listed: false })), {
      confirmed: true,
    });
    const { Shop, ...others } = formulasOf(book);
    expect(Object.values(others).flat()).toEqual([]);
    expect(Shop).toHaveLength(1);
    expect([...book.memory.sheets.keys()]).toEqual(['Quote', 'Shop', 'List check']);
  });
});

describe('the list of formulas', () => {
  const row = (more: unknown[]) => [[...listHeadings], more] as never;

  it('reads what a copy of the file wrote', () => {
    expect(
      readList(
        row([
          'List check',
          'A5',
          '=TONROW.LISTCHECK(Parts[#All],ShopStamp)',
          'cm=1 t="array" ref="A5:C9"',
          'Verdict',
        ]),
      ),
    ).toEqual([
      {
        area: { sheet: 'List check', row: 4, column: 0, rows: 5, columns: 3 },
        formula: '=TONROW.LISTCHECK(Parts[#All],ShopStamp)',
        value: 'Verdict',
        anchor: { row: '', sizes: '' },
      },
    ]);
  });

  it.each([
    [['Quote', 'A5:B6', '=A1', null, 1]],
    [['Quote', 'A5', 'A1', null, 1]],
    [[7, 'A5', '=A1', null, 1]],
  ])('refuses %j with its row', (cells) => {
    expect(() => readList(row(cells))).toThrow(
      'Row 2 of the sheet Tonrow formulas names no cell and formula.',
    );
  });

  it('refuses a sheet that is no list', () => {
    expect(() => readList([['Sheet', 'Cell']])).toThrow('holds no list of formulas');
  });

  it('takes a name that no sheet has', () => {
    const sheet = (name: string) => ({ name, visible: true, protected: false });
    expect(freeListName([sheet('Quote')])).toBe('Tonrow formulas');
    expect(freeListName([sheet('TONROW formulas'), sheet('Tonrow formulas2')])).toBe('Tonrow formulas3');
  });

  it.each([
    ['=ROWS(_xlfn.ANCHORARRAY(A5))', '=ROWS(A5#)'],
    ['=_xlfn._xlws.SORT(A1:A9)', '=SORT(A1:A9)'],
    ['=_xldudf_TONROW_HOLEMIN(A1)&"_xlfn.X"', '=TONROW.HOLEMIN(A1)&"_xlfn.X"'],
  ])('writes %s as hosts take it', (stored, host) => {
    expect(hostFormula(stored)).toBe(host);
  });

  it.each([
    ['=F(Parts[[#This Row],[Mark]:[Press]])', '=F(Parts[@[Mark]:[Press]])', true],
    ['=F(Parts[[#This Row],[Hole]])', '=F(Parts[@Hole])', true],
    ['=F(A1, B1)', '=f(a1,B1)', true],
    ['=F(A1)', '=F(A2)', false],
  ])('%s and %s are the same: %s', (a, b, same) => {
    expect(sameFormula(a, b)).toBe(same);
  });
});

describe('writing steps', () => {
  it('join what stands below each other, and nothing else', () => {
    const one = (sheet: string, row: number, column: number) => ({
      area: cell(sheet, row, column),
      items: [[row]],
    });
    const steps = writingSteps([
      one('Q', 2, 0),
      one('Q', 1, 0),
      one('Q', 1, 1),
      one('Q', 4, 0),
      one('P', 3, 0),
    ]);
    expect(steps.map(({ area: { sheet, row, column, rows } }) => [sheet, row, column, rows])).toEqual([
      ['P', 3, 0, 1],
      ['Q', 1, 0, 2],
      ['Q', 4, 0, 1],
      ['Q', 1, 1, 1],
    ]);
    expect(steps[1]?.contents).toEqual([[1], [2]]);
  });
});
