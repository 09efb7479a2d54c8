import { readFileSync } from 'node:fs';
import path from 'node:path';
import ExcelJS from 'exceljs';
import { strFromU8, unzipSync } from 'fflate';
import { JSDOM } from 'jsdom';
import { describe, expect, it } from 'vitest';
import { addInOfManifest, webExtension } from '../../examples/build/webExtension.mjs';
import { quoteWorkbook } from '../../examples/build/workbook.mjs';
import { catalogue } from '../../src/functions/catalogue.js';
import { readSheetValues } from '../../src/xlsx';
import { builtManifest } from '../manifest/support/manifest.js';

const root = path.resolve(import.meta.dirname, '../..');
const sources = path.join(root, 'examples/quote');
const { DOMParser } = new JSDOM('').window;
const parse = (xml: string) => new DOMParser().parseFromString(xml, 'application/xml');

const offered = new Uint8Array(quoteWorkbook(sources));
const withoutOffer = new Uint8Array(quoteWorkbook(sources, { offerAddIn: false }));
const partsOf = (bytes: Uint8Array) =>
  new Map(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
const parts = partsOf(offered);
const elements = (name: string, tag: string) => [
  ...parse(parts.get(name) ?? '').getElementsByTagNameNS('*', tag),
];
const names = (test: RegExp) => [...parts.keys()].filter((name) => test.test(name));
const officeRelations = 'http://schemas.microsoft.com/office/2011/relationships';
const paneParts = [
  'xl/webextensions/taskpanes.xml',
  'xl/webextensions/_rels/taskpanes.xml.rels',
  'xl/webextensions/webextension1.xml',
];

describe('what offers the add-in to a recipient', () => {
  it('is reached from the package: the pane, then the add-in it shows', () => {
    const link = (file: string, type: string) =>
      elements(file, 'Relationship').find(
        (each) => each.getAttribute('Type') === `${officeRelations}/${type}`,
      );
    expect(link('_rels/.rels', 'webextensiontaskpanes')?.getAttribute('Target')).toBe(paneParts[0]);
    const extension = link(paneParts[1] ?? '', 'webextension');
    expect(extension?.getAttribute('Target')).toBe('webextension1.xml');
    const [shown] = elements(paneParts[0] ?? '', 'webextensionref');
    expect(shown?.getAttribute('r:id')).toBe(extension?.getAttribute('Id'));
  });

  it('has the content types of the platform', () => {
    const types = new Map(
      elements('[Content_Types].xml', 'Override').map((each) => [
        each.getAttribute('PartName'),
        each.getAttribute('ContentType'),
      ]),
    );
    expect(types.get(`/${paneParts[0]}`)).toBe('application/vnd.ms-office.webextensiontaskpanes+xml');
    expect(types.get(`/${paneParts[2]}`)).toBe('application/vnd.ms-office.webextension+xml');
  });

  it('names the add-in as the manifest does, from the organisation first', () => {
    const manifest = parse(builtManifest);
    const id = manifest.querySelector('OfficeApp > Id')?.textContent;
    const version = manifest.querySelector('OfficeApp > Version')?.textContent;
    const references = elements(paneParts[2] ?? '', 'reference');
    expect(references.map((each) => each.getAttribute('storeType'))).toEqual(['EXCatalog', 'Registry']);
    for (const each of references)
      expect([each.getAttribute('id'), each.getAttribute('version')]).toEqual([id, version]);
  });

  it('lets the pane open with the workbook, by the id the manifest gives its pane', () => {
    const [property] = elements(paneParts[2] ?? '', 'property');
    expect(property?.getAttribute('name')).toBe('Office.AutoShowTaskpaneWithDocument');
    expect(property?.getAttribute('value')).toBe('true');
    expect(builtManifest).toContain(`<TaskpaneId>${property?.getAttribute('name')}</TaskpaneId>`);
  });

  it('keeps the order of the published schema', () => {
    const [extension] = elements(paneParts[2] ?? '', 'webextension');
    expect([...(extension?.children ?? [])].map(({ localName }) => localName)).toEqual([
      'reference',
      'alternateReferences',
      'properties',
      'bindings',
      'snapshot',
      'extLst',
    ]);
    expect(extension?.getAttribute('id')).toMatch(/^\{[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\}$/);
  });

  it('lists the functions the workbook uses, by the names under which it stores them, and no other', () => {
    const listed = elements(paneParts[2] ?? '', 'customFunctionIds').map(({ textContent }) => textContent);
    const used = names(/^xl\/worksheets\/sheet\d+\.xml$/).flatMap(
      (name) => parts.get(name)?.match(/_xldudf_TONROW_[A-Z0-9]+/g) ?? [],
    );
    expect(listed).toEqual([...new Set(used)].sort());
    expect(listed.length).toBeGreaterThan(2);
    const known = catalogue.map(({ name }) => `_xldudf_TONROW_${name}`);
    expect(listed.filter((name) => !known.includes(name ?? ''))).toEqual([]);
  });

  it('is escaped', () => {
    const { parts: made } = webExtension({ id: 'a"b', version: '1<2' }, ['A&B']);
    const xml = parse(made['xl/webextensions/webextension1.xml']);
    expect(xml.querySelector('reference')?.getAttribute('id')).toBe('a"b');
    expect(xml.querySelector('customFunctionIds')?.textContent).toBe('A&B');
  });

  it('reads the id and the version of any manifest', () => {
    expect(addInOfManifest('<A><Id>one</Id><Version>2.0</Version></A>')).toEqual({
      id: 'one',
      version: '2.0',
    });
  });
});

describe('a copy without the offer', () => {
  const bare = partsOf(withoutOffer);

  it('holds nothing that names the add-in as an add-in', () => {
    const text = [...bare].map(([name, part]) => `${name}\n${part}`).join('\n');
    expect(text).not.toMatch(/webextension|taskpane/i);
    expect(text).not.toContain(addInOfManifest().id);
  });

  it('is the same workbook otherwise', () => {
    const differing = [...parts].filter(([name, part]) => bare.get(name) !== part).map(([name]) => name);
    expect(differing.sort()).toEqual(['[Content_Types].xml', '_rels/.rels', ...paneParts].sort());
    expect([...bare.keys()].filter((name) => !parts.has(name))).toEqual([]);
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
    expect(spilling.length).toBe(2);
    for (const { formula, cell, sheet } of spilling) {
      expect(cell?.getAttribute('cm')).toBe('1');
      expect(formula.getAttribute('ref')).toBe(cell?.getAttribute('r'));
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
      readSheetValues(offered, sheet.name).forEach((row, r) =>
        row.forEach((value, c) => {
          const cell = sheet.getCell(r + 1, c + 1);
          if (value === null || cell.formula) return;
          compared += 1;
          // A fraction that became a date is a number in the file.
          const read = cell.value instanceof Date ? (cell.value.getTime() - firstDay) / dayMs : cell.value;
          expect(read, `${sheet.name}!${cell.address}`).toBe(value);
        }),
      );
    }
    expect(compared).toBeGreaterThan(900);
  });
});
