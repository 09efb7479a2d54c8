import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import type { CellValue } from '../../../src/core/quantity/cellValue.js';
import { reportRows } from '../../../src/taskpane/handOff/report/lists.js';
import { type ReportData, reportData } from '../../../src/taskpane/handOff/report/reportData.js';
import { reportStyle } from '../../../src/taskpane/handOff/report/reportStyle.js';
import { reportHtml } from '../../../src/taskpane/handOff/report/reportHtml.js';
import { readShopState } from '../../../src/taskpane/shared/readShopState.js';
import type { MemoryWorkbook } from '../support/memoryWorkbook.js';
import { hostileMark, quoteBook } from '../steps/quoteBook.js';

const reportJob = {
  job: 'Grain tower',
  customer: 'Co-op',
  file: 'quote.xlsx',
  date: 'November 25, 2026',
  told: [],
};

async function ready(book: MemoryWorkbook) {
  const state = await readShopState(book);
  if (state.kind !== 'ready') throw new Error('no shop');
  return state;
}

async function made(book = quoteBook()): Promise<ReportData> {
  const state = await ready(book);
  const { rows, told } = await reportRows(book, state, {});
  return reportData(rows, state, { ...reportJob, told });
}

const pageOf = (data: ReportData) => new JSDOM(reportHtml(data)).window.document;
const cellsOf = (table: Element | null | undefined) =>
  [...(table?.querySelectorAll('tbody tr:not(.drawing)') ?? [])].map((row) =>
    [...row.children].map(({ textContent }) => textContent),
  );

describe('the report', () => {
  it('totals rows, pieces, mass and hits; subtotals are no rows', async () => {
    const { totals } = await made();
    expect(totals.map(([label]) => label)).toEqual(['Rows', 'Pieces', 'Mass', 'Punch hits']);
    // 6 + 6 + 1 + 2 pieces; 6·4 + 6·6 + 1·2 + 2·2 holes.
    expect([totals[0], totals[1], totals[3]]).toEqual([
      ['Rows', '4'],
      ['Pieces', '15'],
      ['Punch hits', '66'],
    ]);
    // 490 lb/ft³: plates by hand; the angle weighs 4.9 lb/ft in the tables.
    const byHand =
      (490 * (6 * (0.5 * 10 * 10) + 1 * (0.375 * 8 * 24) + 2 * (0.25 * 6 * 12))) / 1728 + 6 * 6 * 4.9;
    expect(Number.parseFloat(totals[2]?.[1] ?? '')).toBeCloseTo(byHand, -1);
  });

  it('says of how many rows the mass is missing, and why', async () => {
    const book = quoteBook();
    book.type('Quote', 8, 3, [['A99']]);
    const { totals } = await made(book);
    expect(totals[2]?.[1]).toMatch(/ lb \(without 1 row whose section, grade or length is not known\)$/);
  });

  it('names the marks beside each assumption', async () => {
    const book = quoteBook();
    book.type('Quote', 5, 1, [[null]]);
    const { assumptions } = await made(book);
    expect(assumptions).toContainEqual({ text: 'Quantity 1 assumed', rows: 1, marks: 'BP1' });
  });

  it('draws failing rows, and adds up rows by press and mass by section and grade', async () => {
    const data = await made();
    const page = pageOf(data);
    const drawings = [...page.querySelectorAll('[aria-label="Failing rows"] figure')];
    expect(drawings).toHaveLength(2);
    expect(drawings.every((each) => each.querySelector('svg + figcaption')?.textContent)).toBe(true);
    // 6 of the plate and none of the others on Bay B; 6 + 1 + 2 on Bay A.
    expect(
      data.byPress.map(({ press, rows, failing, pieces, marks }) => [press, rows, failing, pieces, marks]),
    ).toEqual([
      ['Bay A', 3, 1, 9, `A1, ${hostileMark}, OK1`],
      ['Bay B', 1, 1, 6, 'BP1'],
    ]);
    // 6 plates of 1/2 × 10 × 10 in and 6 angles of 6 ft, by hand: 490 lb/ft³ and 4.9 lb/ft.
    const masses = Object.fromEntries(data.bySection.map(({ section, mass }) => [section, mass]));
    expect(masses['L3X3X1/4']).toBe('176 lb');
    expect(Number.parseFloat(masses['PL1/2X10'] ?? '')).toBeCloseTo((490 * 6 * 50) / 1728, 0);
    expect(data.byGrade.map(({ grade, pieces }) => [grade, pieces])).toEqual([['A36', 15]]);
  });

  it('prints its head on every sheet, whatever stands in it', async () => {
    const hostile = { ...reportJob, job: '"} </style><script>' };
    const style = reportStyle(hostile, 'in · stamp');
    expect(style).not.toContain('</style');
    expect(style).not.toContain('<script');
    expect(style).toContain('"Page " counter(page) " of " counter(pages)');
  });

  it('does not tell what a press costs', async () => {
    const book = quoteBook();
    const presses = book.memory.tables.find(({ name }) => name === 'Presses');
    book.type('Shop', 20, 0, [['Hourly rate', '', 137, 139]]);
    book.type('Shop', 21, 0, [['Crew', '', 2, 2]]);
    const page = reportHtml(await made(book));
    expect(presses?.area.row).toBe(5);
    expect(page).not.toContain('Hourly rate');
    expect(page).not.toContain('Crew');
    expect(page).not.toContain('137');
    expect(page).toContain('Punch throat');
  });

  it('counts by verdict, worst first', async () => {
    const data = await made();
    expect(data.counts.map(({ verdict, rows, pieces }) => [verdict, rows, pieces])).toEqual([
      ['Too big', 1, 6],
      ['Edge short', 1, 6],
      ['OK', 2, 3],
    ]);
  });

  it('says what the rows are checked against, and what of them no press does', async () => {
    const book = quoteBook();
    book.type('Quote', 8, 2, [['HSS4X4X1/4']]);
    const data = await made(book);
    expect(data.rules.map(([setting]) => setting)).toEqual([
      'Edge code',
      'Job spec',
      'Shear ratio',
      'Hole-to-thickness ratio',
    ]);
    const page = pageOf(data);
    const rows = cellsOf(page.querySelector('[aria-label="Done elsewhere"]'));
    expect(rows.map(([, , , steps]) => steps)).toEqual(['saw, drill']);
  });

  it('lists every failing row with its reason, and where it stands', async () => {
    const page = pageOf(await made());
    expect(cellsOf(page.querySelector('[aria-label="Failing rows"]'))).toEqual([
      [
        'BP1',
        'Parts, 6',
        '6 × PL1/2X10 A36, 10 in',
        'Bay B',
        'Too big',
        '206%',
        "Hole Ø1-5/16 is over Bay B's punch largest hole, 1-1/4 in.",
      ],
      [
        'A1',
        'Parts, 7',
        "6 × L3X3X1/4 A36, 6'-0",
        'Bay A',
        'Edge short',
        '36%',
        'Hole: 7/8 in from the center to the left end is under 1-1/4 in (AISC, sheared edge, bolt 3/4 in).',
      ],
    ]);
  });

  it('has the lists, date, stamp, assumptions and the caution on the first page, and the press data behind it', async () => {
    const data = await made();
    const page = pageOf(data);
    const headings = [...page.querySelectorAll('h2')];
    expect(headings.map(({ textContent }) => textContent)).toEqual([
      'Total',
      'By verdict',
      'Notes on rows',
      'Caution',
      'Rules',
      'Assumptions',
      'Failing rows',
      'Rows near a limit',
      'Rows by press',
      'Mass by section and grade',
      'Mass by grade',
      'Press data',
    ]);
    expect(
      headings.filter(({ className }) => className === 'next').map(({ textContent }) => textContent),
    ).toEqual(['Failing rows', 'Press data']);
    expect([...page.querySelectorAll('.head dd')].map(({ textContent }) => textContent)).toEqual([
      ...['Grain tower', 'Co-op', 'quote.xlsx', 'Parts', 'November 25, 2026', data.stamp],
      // Edge code, job spec, shear ratio and hole ratio.
      ...['AISC', 'none', '0.75', '1'],
    ]);
    expect(data.assumptions[0]?.text).toBe('The shop has no list of tools, so tools were not checked');
    expect(data.assumptions[1]?.text).toMatch(/^Usual values for: Shear ratio, /);
    expect(data.assumptions[1]?.text).not.toContain('Edge code');
    expect(page.body.textContent).toContain('Planning estimates.');
    expect(cellsOf(page.querySelector('[aria-label="Press data"]'))).toContainEqual([
      'Punch throat',
      '',
      '12',
      '8',
    ]);
  });

  it('shows text of the workbook as text', async () => {
    const book = quoteBook();
    book.type('Quote', 7, 4, [['<script>alert(1)</script>']]);
    const page = pageOf(await made(book));
    expect(page.querySelectorAll('script, img')).toHaveLength(0);
    const unread = cellsOf(page.querySelector('[aria-label="Rows not fully checked"]'));
    expect(unread.map(([mark, , , , verdict]) => [mark, verdict])).toEqual([[hostileMark, 'Check input']]);
  });

  it('does not call a row failing that could not be checked', async () => {
    const all = pageOf(await made());
    expect(all.querySelector('[aria-label="Rows not fully checked"]')).toBeNull();
    const book = quoteBook();
    for (const row of [5, 6]) book.type('Quote', row, 2, [['PL nothing']]);
    const data = await made(book);
    expect(data.failing).toEqual([]);
    expect(data.unknown.map(({ mark, row }) => [mark, row])).toEqual([
      ['BP1', 6],
      ['A1', 7],
    ]);
    expect(pageOf(data).body.textContent).toContain('No row fails.');
  });

  it('tells many failing rows by their reasons first, and the rows behind', async () => {
    const book = quoteBook();
    const many = Array.from({ length: 30 }, (_, at): CellValue[] => [
      `P${at}`,
      1,
      'PL1/2X10',
      'A36',
      10,
      '1-5/16',
      4,
      '3/4',
      2,
      2,
      6,
      6,
      'Bay B',
    ]);
    book.memory.tables.push({
      name: 'More',
      area: { sheet: 'Quote', row: 40, column: 0, rows: 31, columns: 13 },
      hasTotals: false,
    });
    book.type('Quote', 40, 0, [book.shown('Parts')[0]?.slice(0, 13) ?? [], ...many]);
    const page = pageOf(await made(book));
    expect(cellsOf(page.querySelector('[aria-label="Reasons"]'))[0]?.slice(0, 2)).toEqual(['31', 'Too big']);
    expect([...page.querySelectorAll('h2.next')].map(({ textContent }) => textContent)).toEqual([
      'Failing rows',
      'Every failing row',
      'Press data',
    ]);
    expect(cellsOf(page.querySelector('[aria-label="Failing rows"]'))).toHaveLength(32);
  });

  it('names presses that still have most of their starter values', async () => {
    const { starterPresses, starterSettings } = await import('../../../src/taskpane/shop/sheet/starter.js');
    const book = quoteBook();
    const table = book.memory.tables.find(({ name }) => name === 'Presses');
    const cells = starterPresses('in');
    book.memory.sheets.set('Shop', new Map());
    if (table)
      table.area = { sheet: 'Shop', row: 5, column: 0, rows: cells.length, columns: cells[0]?.length ?? 0 };
    book.type('Shop', 5, 0, cells).type('Shop', 5, 5, starterSettings('in'));
    book.type('Shop', 3, 1, [[{ formula: '=TONROW.SHOP(Presses[[#Headers],[#Data]])' }]]);
    expect((await made(book)).starters).toEqual(['Bay A', 'Bay B']);
    book.type('Shop', 6, 2, [[61]]);
    const data = await made(book);
    expect(data.starters).toEqual(['Bay A', 'Bay B']);
    expect(pageOf(data).querySelector('.notice')?.textContent).toBe(
      'Invented values in use: Bay A, Bay B. Starter presses are invented: replace them before quoting.',
    );
  });

  it('names hidden rows and rows that are no parts, and leaves hidden ones out when asked', async () => {
    const book = quoteBook();
    const state = await ready(book);
    const [list] = (await book.tables()).filter(({ name }) => name === 'Parts');
    const { sheet = '', row = 0 } = list?.area ?? {};
    book.memory.hidden.set(sheet, [row + 1, row + 2]);
    const all = await reportRows(book, state, {});
    expect(all.told[0]).toBe(`2 hidden rows are in the report too: ${row + 2}–${row + 3}.`);
    expect(all.told.some((sentence) => sentence.includes('taken as a total'))).toBe(true);
    const fewer = await reportRows(book, state, {}, { withHidden: false });
    expect(fewer.told[0]).toBe(`2 hidden rows are left out: ${row + 2}–${row + 3}.`);
    expect(fewer.rows).toHaveLength(all.rows.length - 2);
    const page = pageOf(reportData(fewer.rows, state, { ...reportJob, told: fewer.told }));
    expect(page.body.textContent).toContain('2 hidden rows are left out');
  });

  it('says when the sheet shows results of another shop', async () => {
    const book = quoteBook();
    const state = await ready(book);
    const data = reportData([], { ...state, shown: 'in · old' }, reportJob);
    expect(pageOf(data).querySelector('.notice')?.textContent).toContain('another shop: in · old');
  });

  it('reports while it works, and stops when told to', async () => {
    const book = quoteBook();
    const told: number[] = [];
    const state = await ready(book);
    await reportRows(book, state, { progress: (done, total) => void told.push(done, total) });
    expect(told).toEqual([5, 5]);
    await expect(reportRows(book, state, { signal: AbortSignal.abort() })).rejects.toThrow();
  });

  it('can be made without its style, for pages that let none in', async () => {
    expect(reportHtml(await made(), '')).not.toContain('<style');
  });
});
