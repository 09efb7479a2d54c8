import { readFileSync } from 'node:fs';
import path from 'node:path';
import ExcelJS from 'exceljs';
import { strFromU8, unzipSync } from 'fflate';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { openWorkbook } from '../../src/xlsx/workbook.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { builtManifest } from '../manifest/support/manifest.js';

const root = path.resolve(import.meta.dirname, '../..');
const { DOMParser } = new JSDOM('').window;
const parse = (xml: string) => new DOMParser().parseFromString(xml, 'application/xml');

const example = new Uint8Array(readFileSync(path.join(root, 'examples/quote.xlsx')));
const parts = new Map(Object.entries(unzipSync(example)).map(([name, part]) => [name, strFromU8(part)]));
const elements = (name: string, tag: string) => [
  ...parse(parts.get(name) ?? '').getElementsByTagNameNS('*', tag),
];
const names = (test: RegExp) => [...parts.keys()].filter((name) => test.test(name));

describe('the example', () => {
  it('holds nothing that asks for the add-in or opens its pane', () => {
    const text = [...parts].map(([name, part]) => `${name}\n${part}`).join('\n');
    expect(text).not.toMatch(/webextension|taskpane/i);
    expect(text).not.toContain(/<Id>([^<]+)</.exec(builtManifest)?.[1]);
  });

  it('holds a value for every formula, so that no program has to calculate it when it is opened', () => {
    const { sheets } = openWorkbook(example);
    const formulas = sheets.flatMap(({ cells }) => (cells?.formulas ?? []).filter(Boolean));
    expect(formulas.length).toBeGreaterThan(300);
    expect(formulas.filter((formula) => !formula?.cached)).toEqual([]);
    expect(parts.get('xl/workbook.xml')).not.toContain('fullCalcOnLoad');
  });
});

/** Column and row of an address as texts and numbers that compare. */
function place(address: string | null | undefined): { column: string; row: number } {
  const [, letters = '', digits] = /^([A-Z]+)(\d+)$/.exec(address ?? '') ?? [];
  return { column: letters.padStart(3), row: Number(digits) };
}

const dayMs = 86_400_000;
const firstDay = Date.UTC(1899, 11, 30);

describe('the formulas of the workbook', () => {
  const sheets = names(/^xl\/worksheets\/sheet\d+\.xml$/);
  const formulas = sheets.flatMap((sheet) =>
    elements(sheet, 'f').map((formula) => ({ formula, cell: formula.parentElement, sheet })),
  );
  const tablesOf = (sheet: string) =>
    elements(`xl/worksheets/_rels/${path.posix.basename(sheet)}.rels`, 'Relationship').map((each) => {
      const table = path.posix.join('xl/worksheets', each.getAttribute('Target') ?? '');
      const [from, to] = (elements(table, 'table')[0]?.getAttribute('ref') ?? '').split(':');
      return { from: place(from), to: place(to) };
    });
  const inTable = (sheet: string, address: string | null | undefined) => {
    const { column, row } = place(address);
    return tablesOf(sheet).some(
      ({ from, to }) => from.column <= column && column <= to.column && from.row <= row && row <= to.row,
    );
  };

  it('have array flags exactly where they may spill, and none in a table', () => {
    expect(formulas.length).toBeGreaterThan(300);
    const spilling = formulas.filter(({ formula }) => formula.getAttribute('t') === 'array');
    expect(spilling.length).toBe(5);
    for (const { formula, cell, sheet } of spilling) {
      expect(cell?.getAttribute('cm')).toBe('1');
      expect(formula.getAttribute('ref')?.split(':')[0]).toBe(cell?.getAttribute('r'));
      expect(inTable(sheet, cell?.getAttribute('r'))).toBe(false);
    }
    const flagged = sheets.flatMap((sheet) => elements(sheet, 'c').filter((cell) => cell.hasAttribute('cm')));
    expect(flagged.length).toBe(spilling.length);
    expect(elements('xl/metadata.xml', 'dynamicArrayProperties')[0]?.getAttribute('fDynamic')).toBe('1');
  });

  it('stand in the tables as the calculated columns say', () => {
    const checks = formulas.filter(({ formula }) => formula.textContent?.includes('TONROW_ROWCHECK('));
    expect(checks.length).toBeGreaterThan(300);
    for (const { cell, sheet } of checks) expect(inTable(sheet, cell?.getAttribute('r'))).toBe(true);
  });
});

describe('another library', () => {
  it('opens the workbook with every typed value intact', async () => {
    const workbook = new ExcelJS.Workbook();
    await workbook.xlsx.load(readFileSync(path.join(root, 'examples/quote.xlsx')).buffer as ArrayBuffer);
    let compared = 0;
    for (const sheet of workbook.worksheets) {
      readSheetValues(example, sheet.name).forEach((row, r) =>
        row.forEach((value, c) => {
          const cell = sheet.getCell(r + 1, c + 1);
          if (value === null || cell.formula) return;
          compared += 1;
          // A fraction that became a date is a number in the file.
          const read = cell.value instanceof Date ? (cell.value.getTime() - firstDay) / dayMs : cell.value;
          // It gives a text of no letters as nothing.
          expect(read ?? '', `${sheet.name}!${cell.address}`).toBe(value);
        }),
      );
    }
    expect(compared).toBeGreaterThan(900);
  });
});
