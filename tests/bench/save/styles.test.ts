import '../support/engineOnNode.js';
import type { Border, Style } from '@odoo/o-spreadsheet';
import ExcelJS from 'exceljs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellLook, openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import type { CellLook } from '../../../src/bench/open/cellLook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { stylesOfCells } from '../../../src/bench/open/workbookData.js';
import { atOnce } from '../../../src/xlsx/pausing.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { parseZone } from '../../../src/sheet/address.js';
import { buildWorkbook } from '../../xlsx/support/buildWorkbook.js';
import { cell, functions, openExample } from '../support/openExample.js';
import { otherWritersWorkbook, partOf } from '../support/styledWorkbook.js';

const format = (open: OpenBook, sheet: string, address: string, style: Style) => {
  const { sheetId, row, col } = cell(open.book, sheet, address);
  const target = [{ top: row, bottom: row, left: col, right: col }];
  return open.book.model.dispatch('SET_FORMATTING', { sheetId, target, style });
};
const look = ({ book }: OpenBook, sheet: string, address: string): CellLook =>
  cellLook(book, cell(book, sheet, address)).look;
const reopened = (open: OpenBook) => openBook(saveBook(open).bytes, functions);

async function readByOthers(bytes: Uint8Array, sheet: string, address: string) {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(bytes as never);
  return workbook.getWorksheet(sheet)?.getCell(address);
}

/** The style number of every cell of a sheet that is listed. */
function numbers(bytes: Uint8Array, sheet: string): Map<number, number> {
  const cells = openWorkbook(bytes).sheets.find(({ name }) => name === sheet)?.cells;
  if (!cells) throw new Error(`no ${sheet}`);
  const found = atOnce(stylesOfCells(cells));
  return new Map([...cells.index].map(([key, i]) => [key, found[i] ?? 0]));
}

const listed = (xml: string, list: string, item: string): { count: number; items: number } => {
  const [, count = '', inner = ''] =
    new RegExp(`<${list} count="(\\d+)"[^>]*>(.*?)</${list}>`, 's').exec(xml) ?? [];
  return { count: Number(count), items: inner.split(new RegExp(`<${item}[ />]`)).length - 1 };
};

function expectRightCounts(xml: string): void {
  for (const [list, item] of [
    ['fonts', 'font'],
    ['fills', 'fill'],
    ['borders', 'border'],
    ['cellXfs', 'xf'],
  ] as const) {
    const { count, items } = listed(xml, list, item);
    expect(items, list).toBe(count);
    expect(count, list).toBeGreaterThan(0);
  }
}

const aspects: [string, Style, CellLook, (cell: ExcelJS.Cell | undefined) => unknown, unknown][] = [
  ['bold', { bold: true }, { bold: true }, (c) => c?.font.bold, true],
  ['italic', { italic: true }, { italic: true }, (c) => c?.font.italic, true],
  ['strikethrough', { strikethrough: true }, { strikethrough: true }, (c) => c?.font.strike, true],
  ['underline', { underline: true }, { underline: true }, (c) => c?.font.underline, true],
  ['text color', { textColor: '#AA3311' }, { textColor: '#AA3311' }, (c) => c?.font.color?.argb, 'FFAA3311'],
  [
    'fill color',
    { fillColor: '#FFEE00' },
    { fillColor: '#FFEE00' },
    (c) => (c?.fill as ExcelJS.FillPattern).fgColor?.argb,
    'FFFFEE00',
  ],
  ['font size', { fontSize: 18 }, { fontSize: 18 }, (c) => c?.font.size, 18],
  ['alignment', { align: 'right' }, { align: 'right' }, (c) => c?.alignment.horizontal, 'right'],
  [
    'vertical alignment',
    { verticalAlign: 'middle' },
    { verticalAlign: 'middle' },
    (c) => c?.alignment.vertical,
    'middle',
  ],
  ['wrapping', { wrapping: 'wrap' }, { wrap: true }, (c) => c?.alignment.wrapText, true],
  ['clipping', { wrapping: 'clip' }, { clip: true }, (c) => c?.alignment.shrinkToFit, true],
  ['rotation up', { rotation: -Math.PI / 4 }, { turn: -45 }, (c) => c?.alignment.textRotation, 45],
  ['rotation down', { rotation: Math.PI / 2 }, { turn: 90 }, (c) => c?.alignment.textRotation, -90],
];

describe('saving how a cell looks', () => {
  it.each(aspects)('stores %s, and nothing else changes', async (_, style, expected, read, value) => {
    const open = openExample();
    const before = saveBook(open).bytes;
    expect(format(open, 'Quote', 'E6', style).isSuccessful).toBe(true);
    const was = look(openBook(before, functions), 'Quote', 'E6');
    const { bytes } = saveBook(open);
    expect(look(openBook(bytes, functions), 'Quote', 'E6')).toEqual({ ...was, ...expected });
    expect(read(await readByOthers(bytes, 'Quote', 'E6'))).toBe(value);
    const [old, now] = [numbers(before, 'Quote'), numbers(bytes, 'Quote')];
    const key = 5 * 16_384 + 4;
    for (const [at, number] of old) if (at !== key) expect(now.get(at)).toBe(number);
    expect(now.get(key)).not.toBe(old.get(key));
    expectRightCounts(partOf(bytes, 'xl/styles.xml'));
  });

  it('stores a style that is taken away', () => {
    const open = openExample();
    expect(look(open, 'Quote', 'A5')).toMatchObject({ bold: true, wrap: true });
    format(open, 'Quote', 'A5', { bold: false, fillColor: '', wrapping: 'overflow' });
    const after = look(reopened(open), 'Quote', 'A5');
    expect(after).not.toHaveProperty('bold');
    expect(after).not.toHaveProperty('fillColor');
    expect(after).not.toHaveProperty('wrap');
    expect(after).toMatchObject({ verticalAlign: 'middle', textColor: '#1F2933' });
  });

  it('stores the style of a cell that has nothing in it', async () => {
    const open = openExample();
    format(open, 'Summary', 'N40', { fillColor: '#00FF00' });
    const { bytes } = saveBook(open);
    expect(look(openBook(bytes, functions), 'Summary', 'N40')).toEqual({
      fillColor: '#00FF00',
      textColor: '#1F2933',
    });
    const found = await readByOthers(bytes, 'Summary', 'N40');
    expect((found?.fill as ExcelJS.FillPattern).fgColor?.argb).toBe('FF00FF00');
    expect(found?.value).toBeNull();
  });

  it('stores cleared formatting as the usual style', () => {
    const open = openExample();
    const { sheetId } = cell(open.book, 'Quote', 'A5');
    open.book.model.dispatch('CLEAR_FORMATTING', { sheetId, target: [parseZone('A5:B5') as never] });
    const now = numbers(saveBook(open).bytes, 'Quote');
    expect([now.get(4 * 16_384), now.get(4 * 16_384 + 1)]).toEqual([0, 0]);
  });

  it('stores borders on every side, with those of the cells beside', async () => {
    const open = openExample();
    const { sheetId } = cell(open.book, 'Summary', 'B2');
    open.book.model.dispatch('SET_ZONE_BORDERS', {
      sheetId,
      target: [parseZone('K40:L41') as never],
      border: { position: 'all', style: 'medium', color: '#112233' },
    });
    const { bytes } = saveBook(open);
    const again = openBook(bytes, functions);
    const line = { style: 'medium', color: '#112233' };
    for (const address of ['K40', 'L40', 'K41', 'L41'])
      expect(look(again, 'Summary', address).borders).toEqual({
        left: line,
        right: line,
        top: line,
        bottom: line,
      });
    expect(look(again, 'Summary', 'M40')).toEqual({});
    const found = await readByOthers(bytes, 'Summary', 'L41');
    expect(found?.border.top).toEqual({ style: 'medium', color: { argb: 'FF112233' } });
  });

  it('takes the style of the file along with a cell that is copied', () => {
    const open = openBook(otherWritersWorkbook(), functions);
    const { model } = open.book;
    model.selection.selectCell(0, 0);
    model.dispatch('COPY');
    model.dispatch('PASTE', { target: [parseZone('D4') as never] });
    const { bytes } = saveBook(open);
    expect(numbers(bytes, 'Data').get(3 * 16_384 + 3)).toBe(1);
    expect(partOf(bytes, 'xl/styles.xml')).toBe(partOf(otherWritersWorkbook(), 'xl/styles.xml'));
  });

  it('keeps what the grid does not know of a style', () => {
    const open = openBook(otherWritersWorkbook(), functions);
    format(open, 'Data', 'A1', { bold: true });
    const { bytes } = saveBook(open);
    const styles = partOf(bytes, 'xl/styles.xml');
    const number = numbers(bytes, 'Data').get(0) as number;
    const xfs = /<cellXfs.*?<\/cellXfs>/s.exec(styles)?.[0].match(/<xf [^>]*(?:\/>|[^/]>.*?<\/xf>)/gs) ?? [];
    expect(xfs[number]).toContain('<protection locked="0"/>');
    expect(xfs[number]).toContain('quotePrefix="1"');
    const font = Number(/fontId="(\d+)"/.exec(xfs[number] ?? '')?.[1]);
    const fonts = /<fonts.*?<\/fonts>/s.exec(styles)?.[0].match(/<font>.*?<\/font>/gs) ?? [];
    expect(fonts[font]).toBe(
      '<font><b/><i/><sz val="11"/><color theme="5"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font>',
    );
    expectRightCounts(styles);
  });

  it('makes the styles of a workbook that has none', async () => {
    const bytes = buildWorkbook([{ name: 'Bare', rows: [['Heading', 2]] }]);
    const open = openBook(bytes, functions);
    expect(saveBook(open).bytes).toEqual(bytes);
    format(open, 'Bare', 'A1', { bold: true });
    const saved = saveBook(open).bytes;
    expect((await readByOthers(saved, 'Bare', 'A1'))?.font.bold).toBe(true);
    expect(look(openBook(saved, functions), 'Bare', 'A1')).toEqual({ bold: true });
    expect(numbers(saved, 'Bare').get(1)).toBe(0);
  });

  it('does not store the colors of rules', () => {
    const open = openExample();
    const { model, getters } = open.book;
    const before = saveBook(open).bytes;
    model.dispatch('UPDATE_CELL', { ...cell(open.book, 'Quote', 'E6'), content: 'no such steel' });
    const verdict = cell(open.book, 'Quote', 'A6');
    expect(getters.getCellComputedStyle(verdict).fillColor).toBeTruthy();
    expect(numbers(saveBook(open).bytes, 'Quote')).toEqual(numbers(before, 'Quote'));
  });
});

describe('saving any style', () => {
  const color = fc
    .integer({ min: 0, max: 0xffffff })
    .map((n) => `#${n.toString(16).padStart(6, '0').toUpperCase()}`);
  const style = fc.record(
    {
      bold: fc.boolean(),
      italic: fc.boolean(),
      strikethrough: fc.boolean(),
      underline: fc.boolean(),
      textColor: fc.oneof(color, fc.constant('')),
      fillColor: fc.oneof(color, fc.constant('')),
      fontSize: fc.integer({ min: 6, max: 40 }),
      align: fc.constantFrom('left', 'center', 'right', undefined),
      verticalAlign: fc.constantFrom('top', 'middle', 'bottom', undefined),
      wrapping: fc.constantFrom('wrap', 'clip', 'overflow', undefined),
      rotation: fc.constantFrom(0, Math.PI / 4, Math.PI / 2, -Math.PI / 2, -Math.PI / 4),
    },
    { requiredKeys: [] },
  );
  const line = fc.option(
    fc.record({ style: fc.constantFrom('thin', 'medium', 'thick', 'dashed', 'dotted'), color: color }),
    { nil: undefined },
  );
  const border = fc.record({ left: line, right: line, top: line, bottom: line });
  const addresses = ['A1', 'B1', 'C3', 'D4', 'F9'];
  const change = fc.record({ address: fc.constantFrom(...addresses), style, border });

  it('gives the same look again, once and twice', () => {
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
        const open = openBook(otherWritersWorkbook(), functions);
        for (const { address, style: wanted, border: lines } of changes) {
          format(open, 'Data', address, wanted as Style);
          open.book.model.dispatch('SET_BORDER', {
            ...cell(open.book, 'Data', address),
            border: lines as Border,
          });
        }
        const { bytes } = saveBook(open);
        const again = openBook(bytes, functions);
        for (const address of addresses) {
          const { style: told, isFormula } =
            open.book.getters.getCell(cell(open.book, 'Data', address)) ?? {};
          // A cell that was not there gets the size of the workbook's own font, unless it was told another.
          const usual = told && ('fontSize' in told || 'fileStyle' in told) ? {} : { fontSize: 11 };
          const isThere =
            told !== undefined || isFormula !== undefined || look(open, 'Data', address).borders;
          const expected = isThere ? { ...usual, ...look(open, 'Data', address) } : {};
          expect(look(again, 'Data', address)).toEqual(expected);
        }
        expect(saveBook(again).bytes).toEqual(bytes);
        expectRightCounts(partOf(bytes, 'xl/styles.xml'));
      }),
      { numRuns: 60 },
    );
  });
});
