import { readFileSync } from 'node:fs';
import path from 'node:path';
import ExcelJS from 'exceljs';
import { strFromU8, unzipSync } from 'fflate';
import { JSDOM } from 'jsdom';
import { beforeAll, describe, expect, it } from 'vitest';
import { quoteWorkbook } from '../../examples/build/workbook.mjs';
import { verdicts } from '../../src/core/check/verdict.js';
import { recalculated, sources, workbookFile } from './quote.js';

const bytes = new Uint8Array(readFileSync(workbookFile));
const texts = new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
const { DOMParser } = new JSDOM('').window;
const documents = new Map<string, Document>();

beforeAll(() => {
  for (const [name, text] of texts)
    documents.set(name, new DOMParser().parseFromString(text, 'application/xml'));
});

const elements = (name: string, tag: string) => [
  ...(documents.get(name)?.getElementsByTagNameNS('*', tag) ?? []),
];
const sheetNames = () =>
  elements('xl/workbook.xml', 'sheet').map((sheet) => sheet.getAttribute('name') ?? '');
const sheetPart = (name: string) => `xl/worksheets/sheet${sheetNames().indexOf(name) + 1}.xml`;
const tableParts = () => [...texts.keys()].filter((name) => name.startsWith('xl/tables/'));
const cellsOf = new Map<string, Map<string | null, Element>>();

function cellAt(part: string, address: string): Element | undefined {
  const cells =
    cellsOf.get(part) ?? new Map(elements(part, 'c').map((cell) => [cell.getAttribute('r'), cell]));
  cellsOf.set(part, cells);
  return cells.get(address);
}

const child = (cell: Element | undefined, tag: string) =>
  cell?.getElementsByTagNameNS('*', tag)[0]?.textContent ?? undefined;

function cellText(part: string, address: string): string | undefined {
  const cell = cellAt(part, address);
  const value = child(cell, 'v');
  if (cell?.getAttribute('t') !== 's') return value;
  return elements('xl/sharedStrings.xml', 'si')[Number(value)]?.textContent ?? undefined;
}

/** The sheet part a table stands on. */
function sheetOfTable(table: string): string {
  const relationships = [...texts].find(
    ([name, text]) => name.startsWith('xl/worksheets/_rels/') && text.includes(`../${table.slice(3)}`),
  );
  return `xl/worksheets/${path.basename(relationships?.[0] ?? '', '.rels')}`;
}

const columnNumber = (letters: string) =>
  [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
const columnLetters = (number: number): string =>
  number > 26
    ? columnLetters(Math.floor((number - 1) / 26)) + columnLetters(((number - 1) % 26) + 1)
    : String.fromCharCode(64 + number);

function zone(ref: string) {
  const [, left = '', top, right = '', bottom] = /^([A-Z]+)(\d+):([A-Z]+)(\d+)$/.exec(ref) ?? [];
  return { left: columnNumber(left), right: columnNumber(right), top: Number(top), bottom: Number(bottom) };
}

describe('the package of the example quote', () => {
  it('is exactly what the script builds from the sources and the functions calculate: run it again if not', async () => {
    const { bytes: calculated, report } = await recalculated(
      new Uint8Array(quoteWorkbook(sources, verdicts)),
    );
    expect(report.stale).toEqual([]);
    expect(Buffer.compare(Buffer.from(calculated), Buffer.from(bytes))).toBe(0);
  });

  it('holds well-formed XML in every part', () => {
    const broken = [...documents].filter(([, xml]) => xml.getElementsByTagName('parsererror').length > 0);
    expect(broken.map(([name]) => name)).toEqual([]);
    expect(documents.size).toBeGreaterThan(15);
  });

  it('names a content type for every part, and no part that is not there', () => {
    const overrides = elements('[Content_Types].xml', 'Override').map(
      (override) => override.getAttribute('PartName')?.slice(1) ?? '',
    );
    expect(overrides.filter((name) => !texts.has(name))).toEqual([]);
    const typed = (name: string) =>
      overrides.includes(name) || name.endsWith('.rels') || name === '[Content_Types].xml';
    expect([...texts.keys()].filter((name) => !typed(name))).toEqual([]);
  });

  it('has no relationship that leads nowhere, and every r:id in its sheets has one', () => {
    const lost: string[] = [];
    for (const name of [...texts.keys()].filter((each) => each.endsWith('.rels'))) {
      const folder = path.posix.dirname(path.posix.dirname(name));
      const ids = elements(name, 'Relationship').map((link) => {
        const target = path.posix.normalize(path.posix.join(folder, link.getAttribute('Target') ?? ''));
        if (!texts.has(target)) lost.push(`${name}: ${target}`);
        return link.getAttribute('Id');
      });
      const owner = path.posix.join(folder, path.posix.basename(name, '.rels'));
      for (const [, id] of (texts.get(owner) ?? '').matchAll(/ r:id="([^"]+)"/g))
        if (!ids.includes(id ?? '')) lost.push(`${owner}: ${id}`);
    }
    expect(lost).toEqual([]);
  });

  it('has tables whose columns are the texts of their heading cells', () => {
    const names = tableParts().map((part) => {
      const [table] = elements(part, 'table');
      const { left, right, top } = zone(table?.getAttribute('ref') ?? '');
      const columns = elements(part, 'tableColumn').map((column) => column.getAttribute('name'));
      const headings = Array.from({ length: right - left + 1 }, (_, at) =>
        cellText(sheetOfTable(part), `${columnLetters(left + at)}${top}`),
      );
      expect(headings).toEqual(columns);
      expect(new Set(columns).size).toBe(columns.length);
      return table?.getAttribute('displayName');
    });
    expect(names.sort()).toEqual(['Grades', 'Parts', 'Presses', 'Settings', 'Stock', 'Tools']);
    const ids = tableParts().map((part) => elements(part, 'table')[0]?.getAttribute('id'));
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('has tables that do not overlap', () => {
    const shop = tableParts()
      .filter((part) => sheetOfTable(part) === sheetPart('Shop'))
      .map((part) => zone(elements(part, 'table')[0]?.getAttribute('ref') ?? ''));
    const overlapping = shop.filter((a, at) =>
      shop
        .slice(at + 1)
        .some((b) => a.left <= b.right && b.left <= a.right && a.top <= b.bottom && b.top <= a.bottom),
    );
    expect(shop.length).toBe(5);
    expect(overlapping).toEqual([]);
  });

  it('has the same formula in every cell of a calculated column as the table says', () => {
    const part =
      tableParts().find((name) => elements(name, 'table')[0]?.getAttribute('name') === 'Parts') ?? '';
    const { left, top, bottom } = zone(elements(part, 'table')[0]?.getAttribute('ref') ?? '');
    const calculated = elements(part, 'tableColumn').flatMap((column, at) => {
      const formula = child(column, 'calculatedColumnFormula');
      return formula === undefined ? [] : [{ letters: columnLetters(left + at), formula }];
    });
    expect(calculated.length).toBe(10);
    for (const { letters, formula } of calculated) {
      for (let row = top + 1; row <= bottom; row++)
        expect(child(cellAt(sheetPart('Quote'), `${letters}${row}`), 'f')).toBe(formula);
    }
  });

  it('names the cell of the shop stamp, stored as a formula that may spill', () => {
    const [name] = elements('xl/workbook.xml', 'definedName');
    expect(name?.getAttribute('name')).toBe('ShopStamp');
    const [sheet = '', cell = ''] = (name?.textContent ?? '').replaceAll('$', '').split('!');
    const stamp = cellAt(sheetPart(sheet), cell);
    const formula = stamp?.getElementsByTagNameNS('*', 'f')[0];
    expect(formula?.textContent).toMatch(/^_xldudf_TONROW_SHOP\(Presses\[\[#Headers\],\[#Data\]\],/);
    expect([stamp?.getAttribute('cm'), formula?.getAttribute('t'), formula?.getAttribute('ref')]).toEqual([
      '1',
      'array',
      cell,
    ]);
    expect(elements('xl/metadata.xml', 'metadataType')[0]?.getAttribute('name')).toBe('XLDAPR');
  });

  it('stores a value for every formula, and our own under the names of files', () => {
    const formulas = sheetNames().flatMap((sheet) =>
      elements(sheetPart(sheet), 'f').map((formula) => ({
        text: formula.textContent ?? '',
        cached: child(formula.parentElement ?? undefined, 'v') !== undefined,
        at: `${sheet}!${formula.parentElement?.getAttribute('r')}`,
      })),
    );
    const own = formulas.filter(({ text }) => text.startsWith('_xldudf_TONROW_'));
    expect(own.length).toBeGreaterThan(300);
    expect(formulas.filter(({ cached }) => !cached)).toEqual([]);
    expect(formulas.filter(({ text }) => /TONROW\.|@/.test(text))).toEqual([]);
  });

  it('loads in a general spreadsheet library with its cells as typed', async () => {
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.readFile(workbookFile);
    const sheet = workbook.getWorksheet('Quote');
    expect(workbook.worksheets.map(({ name }) => name)).toEqual(['Quote', 'Shop', 'Summary', 'List check']);
    expect(sheet?.getCell('G6').value).toBe('1-5/16');
    expect(sheet?.getCell('G6').numFmt).toBe('@');
    expect(sheet?.getCell('A6').formula).toContain('_xldudf_TONROW_ROWCHECK(');
    expect(sheet?.views[0]).toMatchObject({ state: 'frozen', ySplit: 5 });
  });
});
