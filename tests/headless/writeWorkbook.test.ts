import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Worksheet } from '../../src/xlsx/storedCells.js';
import { openWorkbook, type Sheet, type Workbook } from '../../src/xlsx/workbook.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { writeWorkbook } from '../../src/headless/files/writeWorkbook.js';
import type { CellChange } from '../../src/xlsx/writeCell.js';
import { sheetChanges } from '../xlsx/support/sheetChanges.js';
import { buildWorkbook, MAIN, workbookParts, zipParts } from '../xlsx/support/buildWorkbook.js';

const sheetPart = 'xl/worksheets/sheet1.xml';

/** The file of a workbook after changes on its first sheet. */
function written(workbook: Workbook, changes: CellChange[]): Promise<Uint8Array> {
  const sheet = workbook.sheets[0] as Sheet;
  return writeWorkbook(workbook, new Map([[sheet, sheetChanges(sheet.cells as Worksheet, changes)]]));
}

/** The worksheet part after changes, without what stands before and after its data. */
async function patched(
  data: string,
  changes: CellChange[],
  root = `<worksheet xmlns="${MAIN}">`,
  close = '</worksheet>',
): Promise<string> {
  const parts = { ...workbookParts([{ name: 'Quote' }]), [sheetPart]: `${root}${data}${close}` };
  const bytes = await written(openWorkbook(zipParts(parts)), changes);
  const xml = strFromU8(unzipSync(bytes)[sheetPart] as Uint8Array);
  expect(xml.startsWith(root) && xml.endsWith(close)).toBe(true);
  return xml.slice(root.length, xml.length - close.length);
}

const data = (cells: string) => `<sheetData><row r="1" spans="1:3">${cells}</row></sheetData>`;
const at = (column: number, value: CellChange['value']): CellChange => ({ row: 0, column, value });

describe('a stored value', () => {
  it.each([
    ['<c r="A1" s="3"><f>B1</f><v>1</v></c>', 2.5, '<c r="A1" s="3"><f>B1</f><v>2.5</v></c>'],
    ['<c r="A1" t="str" s="3"><f>B1</f><v>x</v></c>', 1e21, '<c r="A1" s="3"><f>B1</f><v>1e+21</v></c>'],
    ['<c r="A1" s="3" t="e"><f>B1</f><v>#N/A</v></c>', true, '<c r="A1" s="3" t="b"><f>B1</f><v>1</v></c>'],
    ['<c r="A1"><f>B1</f></c>', 'a<b & "c"', '<c r="A1" t="str"><f>B1</f><v>a&lt;b &amp; "c"</v></c>'],
    ['<c r="A1"><f>B1</f><v>1</v></c>', ' x\ny ', '<c r="A1" t="str"><f>B1</f><v> x\ny </v></c>'],
    [
      '<c r="A1"><f>B1</f><v>1</v></c>',
      'a\rb_x0041_\u0007',
      '<c r="A1" t="str"><f>B1</f><v>a_x000D_b_x005F_x0041__x0007_</v></c>',
    ],
    ['<c r="A1"><f>B1</f><v>1</v></c>', 'Größe ≤ 😀', '<c r="A1" t="str"><f>B1</f><v>Größe ≤ 😀</v></c>'],
    ['<c r="A1"><f>B1</f><v>1</v></c>', { error: '#DIV/0!' }, '<c r="A1" t="e"><f>B1</f><v>#DIV/0!</v></c>'],
    ['<c r="A1"><f>B1</f><v>1</v></c>', { error: '#SPILL!' }, '<c r="A1" t="e"><f>B1</f><v>#VALUE!</v></c>'],
    ['<c r="A1" s="2"><v>1</v></c>', null, '<c r="A1" s="2"/>'],
    ['<c r="A1" s="2"/>', 7, '<c r="A1" s="2"><v>7</v></c>'],
    ["<c r='A1' t='str' ><f>B1</f><v/></c>", 7, "<c r='A1'><f>B1</f><v>7</v></c>"],
    [
      '<c r="A1"><f>B1</f><v>1</v><extLst><ext/></extLst></c>',
      2,
      '<c r="A1"><f>B1</f><v>2</v><extLst><ext/></extLst></c>',
    ],
    [
      '<c r="A1" cm="1"><f t="array" ref="A1"><![CDATA[B1]]></f><v>1</v></c>',
      2,
      '<c r="A1" cm="1"><f t="array" ref="A1"><![CDATA[B1]]></f><v>2</v></c>',
    ],
  ] as [string, CellChange['value'], string][])('%s becomes %j', async (before, value, after) => {
    const other = '<c r="C1"><v>1.50</v></c>';
    expect(await patched(data(before + other), [at(0, value)])).toBe(data(after + other));
  });

  it('keeps the prefix that the part uses', async () => {
    const root = `<x:worksheet xmlns:x="${MAIN}">`;
    const cell = (inner: string) =>
      `<x:sheetData><x:row r="1"><x:c r="A1"${inner}</x:c></x:row></x:sheetData>`;
    expect(await patched(cell('><x:f>B1</x:f><x:v>1</x:v>'), [at(0, 'a')], root, '</x:worksheet>')).toBe(
      cell(' t="str"><x:f>B1</x:f><x:v>a</x:v>'),
    );
  });

  it('of a cell the caller changes replaces formula and text', async () => {
    const change: CellChange = { ...at(0, 'new'), replacesFormula: true };
    expect(await patched(data('<c r="A1" s="1"><f>B1</f><v>1</v></c>'), [change])).toBe(
      data('<c r="A1" s="1" t="inlineStr"><is><t>new</t></is></c>'),
    );
    expect(
      await patched(data('<c r="A1" t="inlineStr"><is><t>old</t></is></c>'), [{ ...change, value: 5 }]),
    ).toBe(data('<c r="A1"><v>5</v></c>'));
  });
});

describe('a formula that spills elsewhere', () => {
  it('has its range changed, nothing else of it', async () => {
    const cell = (ref: string, value: number) =>
      `<c r="A1" cm="1"><f t="array" aca="1" ref="${ref}" ca="1">F(1)</f><v>${value}</v></c>`;
    const change: CellChange = { ...at(0, 1), ref: { top: 0, bottom: 2, left: 0, right: 1 } };
    expect(await patched(data(cell('A1:A2', 1)), [change])).toBe(data(cell('A1:B3', 1)));
  });
});

describe('new cells', () => {
  it('go between their neighbors', async () => {
    const changes = [at(3, 4), at(1, 2), at(0, 1)];
    expect(await patched(data('<c r="C1"><v>3</v></c>'), changes)).toBe(
      data('<c r="A1"><v>1</v></c><c r="B1"><v>2</v></c><c r="C1"><v>3</v></c><c r="D1"><v>4</v></c>'),
    );
  });

  it('go into empty rows, new rows before, between and after', async () => {
    const changes = [0, 1, 2, 3, 4].map((row): CellChange => ({ row, column: 0, value: row }));
    const row = (r: number, open = `<row r="${r + 1}">`) => `${open}<c r="A${r + 1}"><v>${r}</v></c></row>`;
    expect(await patched('<sheetData><row r="2" ht="20"/><row r="4"></row></sheetData>', changes)).toBe(
      `<sheetData>${row(0)}${row(1, '<row r="2" ht="20">')}${row(2)}${row(3)}${row(4)}</sheetData>`,
    );
  });

  it('go into an empty sheet, and only its stated extent grows', async () => {
    const before = '<dimension ref="A1"/><sheetData/>';
    expect(await patched(before, [{ row: 2, column: 1, value: 'x' }])).toBe(
      '<dimension ref="A1:B3"/><sheetData><row r="3"><c r="B3" t="str"><v>x</v></c></row></sheetData>',
    );
  });

  it('that are blank are not written', async () => {
    expect(await patched(data(''), [at(5, null)])).toBe(data(''));
  });

  it('stand in rows and cells without addresses too', async () => {
    expect(
      await patched('<sheetData><row><c><v>1</v></c><c><v>2</v></c></row></sheetData>', [at(2, 3)]),
    ).toBe('<sheetData><row><c><v>1</v></c><c><v>2</v></c><c r="C1"><v>3</v></c></row></sheetData>');
  });
});

describe('the file', () => {
  it('without changes is the same, byte for byte', async () => {
    const bytes = buildWorkbook([{ name: 'Quote', rows: [[1]] }]);
    expect(await writeWorkbook(openWorkbook(bytes), new Map())).toEqual(bytes);
  });

  it('given as a Buffer inside a larger one is read and left alone', async () => {
    const bytes = buildWorkbook([{ name: 'Quote', rows: [[1]] }]);
    const pool = Buffer.concat([Buffer.alloc(100, 1), bytes, Buffer.alloc(100, 2)]);
    const before = Buffer.from(pool);
    const workbook = openWorkbook(pool.subarray(100, 100 + bytes.length));
    const bytesWritten = await written(workbook, [at(0, 2)]);
    expect(pool.equals(before)).toBe(true);
    expect(readSheetValues(bytesWritten, 'Quote')).toEqual([[2]]);
  });
});
