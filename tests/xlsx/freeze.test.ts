import ExcelJS from 'exceljs';
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, describe, expect, it } from 'vitest';
import { openWorkbook, type Workbook } from '../../src/xlsx/workbook.js';
import { readSheetValues } from '../../src/xlsx/readSheetValues.js';
import { type CopyKind, valuesCopy } from '../../src/xlsx/freeze/valuesCopy.js';
import { bringFormulasBack } from '../../src/xlsx/freeze/bringFormulasBack.js';
import { recalculatedQuoteFile } from './support/recalculatedQuote.js';
import {
  type BuiltSheet,
  buildWorkbook,
  formula,
  MAIN,
  spilled,
  spilling,
  workbookParts,
  zipParts,
} from './support/buildWorkbook.js';

const shop: BuiltSheet = {
  name: 'Shop',
  rows: [
    [
      'Stamp',
      formula('_xldudf_TONROW_SHOP(Presses[[#Headers],[#Data]])', 'in · 1 press · rules 1 · AAAA-BBBB-CCCC'),
    ],
    ['Item', 'Bay A'],
    ['Hourly rate', 97.25],
  ],
  tables: [{ name: 'Presses', ref: 'A2:B3', columns: ['Item', 'Bay A'] }],
};
const stamp = 'Shop!$B$1';
const use = (row: number) => `_xldudf_TONROW_PUNCHUSE("Bay A",A${row},B${row},"A36",ShopStamp)`;
const quote: BuiltSheet = {
  name: 'Quote',
  rows: [
    ['Hole', 'Thickness', 'Use', 'Twice', 'Text'],
    [
      0.5,
      0.25,
      formula(use(2), 0.125),
      formula('C2*2', 0.25),
      formula('"TONROW.SHOP("&A2', 'TONROW.SHOP(0.5'),
    ],
    [1, 0.5, formula(use(3), 'Too big'), formula('LEN(C3)', 7), "O'Neil & <b> _x0041_"],
    [],
    [
      spilling('_xldudf_TONROW_LISTCHECK(A1:B3,ShopStamp)', 'A5:A7', 'Verdict'),
      formula('ROWS(_xlfn.ANCHORARRAY(A5))', 3),
    ],
    [spilled('OK')],
    [spilled('Too big')],
  ],
};
const file = (sheets = [quote, shop], names: Record<string, string> = { ShopStamp: stamp }) =>
  buildWorkbook(sheets, { names });

const partsOf = (bytes: Uint8Array) =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
const formulasOf = ({ sheets }: Workbook) =>
  Object.fromEntries(
    sheets.map(({ name, cells }) => [
      name,
      (cells?.formulas ?? []).flatMap((each) => (each ? each.text : [])),
    ]),
  );
const copied = (bytes: Uint8Array, kind: CopyKind) => valuesCopy(bytes, { kind });

describe('a values copy for the shop', () => {
  it('has our formulas, and those that read what ours spilled, as values; other formulas stay', () => {
    const copy = openWorkbook(copied(file(), 'shop').bytes);
    expect(formulasOf(copy)).toEqual({
      Quote: ['C2*2', '"TONROW.SHOP("&A2', 'LEN(C3)'],
      Shop: [],
      'Tonrow formulas': [],
    });
  });

  it('shows the same values in every cell', () => {
    const { bytes } = copied(file(), 'shop');
    for (const name of ['Quote', 'Shop'])
      expect(readSheetValues(bytes, name)).toEqual(readSheetValues(file(), name));
  });

  it('lists where each formula stood, as people read it', () => {
    const { bytes, formulas } = copied(file(), 'shop');
    const [headings, ...rows] = readSheetValues(bytes, 'Tonrow formulas');
    expect(headings).toEqual([
      'Sheet',
      'Cell',
      'Formula',
      'Stored as',
      'Value',
      'Table',
      'Heading',
      'Row',
      'Sizes',
    ]);
    expect(rows).toHaveLength(5);
    expect(formulas).toBe(5);
    expect(rows[0]).toEqual([
      'Quote',
      'C2',
      '=TONROW.PUNCHUSE("Bay A",A2,B2,"A36",ShopStamp)',
      null,
      0.125,
      null,
      null,
      '0.5 | 0.25',
      'Quote 7x5',
    ]);
    expect(rows[2]).toEqual([
      'Quote',
      'A5',
      '=TONROW.LISTCHECK(A1:B3,ShopStamp)',
      'cm=1 t="array" ref="A5:A7"',
      'Verdict',
      null,
      null,
      null,
      'Quote 7x5',
    ]);
  });

  it('keeps the bytes of every part that holds no formula of ours', () => {
    const plain: BuiltSheet = { name: 'Plain', rows: [[formula('1+1', 2), 'a']] };
    const before = file([quote, shop, plain]);
    const after = partsOf(copied(before, 'shop').bytes);
    for (const part of ['xl/worksheets/sheet3.xml', 'xl/tables/table1.xml', 'xl/metadata.xml', '_rels/.rels'])
      expect(after[part]).toBe(partsOf(before)[part]);
  });

  it('takes another name for the list where a sheet has that name', () => {
    const taken: BuiltSheet = { name: 'tonrow FORMULAS', rows: [['mine']] };
    const { bytes } = copied(file([quote, shop, taken]), 'shop');
    expect(openWorkbook(bytes).sheets.map(({ name }) => name)).toContain('Tonrow formulas2');
  });

  it('refuses a file with a formula that was never calculated', () => {
    const open: BuiltSheet = { name: 'Quote', rows: [[formula(use(2))]] };
    expect(() => copied(file([open, shop]), 'shop')).toThrow(
      '1 formula has no value in the file: recalculate and save it first.',
    );
  });
});

describe('formulas brought back', () => {
  it('are those of the original, cell by cell, and the list is gone', () => {
    const back = bringFormulasBack(copied(file(), 'shop').bytes);
    expect(back).toMatchObject({ restored: 5, changed: [] });
    expect(formulasOf(openWorkbook(back.bytes))).toEqual(formulasOf(openWorkbook(file())));
    for (const name of ['Quote', 'Shop'])
      expect(readSheetValues(back.bytes, name)).toEqual(readSheetValues(file(), name));
  });

  it('leave every worksheet, byte by byte, as it was', () => {
    const before = partsOf(file());
    const after = partsOf(bringFormulasBack(copied(file(), 'shop').bytes).bytes);
    expect(Object.keys(after).sort()).toEqual(Object.keys(before).sort());
    for (const [name, text] of Object.entries(before)) expect(after[name]).toBe(text);
  });

  it('come back one by one where the file stored them together', () => {
    const rows = [1, 2, 3].map((row) => {
      const f =
        row === 1
          ? `<f t="shared" ref="B1:B3" si="0">_xldudf_TONROW_HOLEMIN(A1,$A$1,"A1")</f>`
          : '<f t="shared" si="0"/>';
      return `<row r="${row}"><c r="A${row}"><v>1</v></c><c r="B${row}">${f}<v>${row}</v></c></row>`;
    });
    const before = buildWorkbook([{ name: 'Quote', sheetData: rows.join('') }]);
    const back = openWorkbook(bringFormulasBack(copied(before, 'shop').bytes).bytes);
    expect(formulasOf(back).Quote).toEqual(
      [1, 2, 3].map((row) => `_xldudf_TONROW_HOLEMIN(A${row},$A$1,"A1")`),
    );
  });

  it('report cells that were changed in the copy', () => {
    const parts = partsOf(copied(file(), 'shop').bytes);
    const sheet = 'xl/worksheets/sheet1.xml';
    parts[sheet] = (parts[sheet] ?? '').replace('<v>0.125</v>', '<v>0.5</v>');
    expect(bringFormulasBack(zipParts(parts)).changed).toEqual(['Quote!C2']);
  });

  it.each([
    [
      'a list that names a cell elsewhere',
      '>C2<',
      '>C99<',
      'the formula of Quote!C99 names cells by address',
    ],
    ['a list that names a sheet that is gone', '>Quote<', '>Other<', 'there is no sheet "Other"'],
    ['a list with something else than a cell', '>C2<', '>C2:D3<', 'Row 2 of the list names no cell'],
    [
      'attributes that are none',
      'cm=1 t="array"',
      'cm=1 t="array"&gt;&lt;f',
      'Row 4 of the list names no cell',
    ],
  ])('refuse %s, and change nothing', (_, written, instead, sentence) => {
    const parts = partsOf(copied(file(), 'shop').bytes);
    const list = 'xl/worksheets/tonrowFormulas.xml';
    const before = parts[list] ?? '';
    parts[list] = before.replace(written, instead);
    expect(parts[list]).not.toBe(before);
    expect(() => bringFormulasBack(zipParts(parts))).toThrow(sentence);
  });

  it('refuse a file that is no such copy', () => {
    expect(() => bringFormulasBack(file())).toThrow('The file holds no list of formulas');
  });
});

describe('formulas brought back into a copy whose rows moved', () => {
  const check = 'Parts[[#Headers],[Mark]:[Hole]],Parts[[#This Row],[Mark]:[Hole]],ShopStamp';
  const own = (row: number) => formula(`_xldudf_TONROW_ROWCHECK(${check},"A${row}")`, `of row ${row}`);
  const list: BuiltSheet = {
    name: 'Quote',
    rows: [
      ['Mark', 'Hole', 'Verdict'],
      ['A1', '13/16', own(2)],
      ['A2', '15/16', own(3)],
      ['A3', '1-1/16', own(4)],
    ],
    tables: [{ name: 'Parts', ref: 'A1:C4', columns: ['Mark', 'Hole', 'Verdict'] }],
  };

  /** The copy as a program saves it after somebody worked on the list. */
  function edited(rows: BuiltSheet['rows'] & unknown[], ref: string, columns = ['Mark', 'Hole', 'Verdict']) {
    const copy = copied(file([list, shop]), 'shop').bytes;
    const kept = readSheetValues(copy, 'Tonrow formulas') as BuiltSheet['rows'] & unknown[];
    return buildWorkbook(
      [
        { name: 'Quote', rows, tables: [{ name: 'Parts', ref, columns }] },
        { name: 'Shop', rows: readSheetValues(copy, 'Shop') as typeof kept, tables: shop.tables ?? [] },
        { name: 'Tonrow formulas', rows: kept },
      ],
      { names: { ShopStamp: stamp } },
    );
  }
  const a = ['A1', '13/16', 'of row 2'];
  const b = ['A2', '15/16', 'of row 3'];
  const c = ['A3', '1-1/16', 'of row 4'];
  const head = ['Mark', 'Hole', 'Verdict'];

  it('stand beside their marks after a row was put in and the list was sorted', () => {
    const back = bringFormulasBack(edited([head, c, ['N1', '9/16'], a, b], 'A1:C5'));
    expect(back).toMatchObject({ restored: 4, moved: 3, gone: [], changed: [] });
    const { sheets } = openWorkbook(back.bytes);
    const { cells } = sheets[0] ?? {};
    const texts = [1, 2, 3, 4].map((row) =>
      cells?.formulas[cells.index.get(row * 16_384 + 2) ?? -1]?.text.slice(-4, -2),
    );
    expect(texts).toEqual(['A4', undefined, 'A2', 'A3']);
    expect(partsOf(back.bytes)['xl/workbook.xml']).toContain('fullCalcOnLoad="1"');
  });

  it('leave out a row that was deleted, and say so', () => {
    expect(bringFormulasBack(edited([head, a, c], 'A1:C3'))).toMatchObject({
      restored: 3,
      gone: ['Quote!C3'],
    });
  });

  it('are refused where a heading they name was renamed, and where a row cannot be told', () => {
    expect(() =>
      bringFormulasBack(
        edited([['Mark', 'Bohrung', 'Verdict'], a, b, c], 'A1:C4', ['Mark', 'Bohrung', 'Verdict']),
      ),
    ).toThrow('name the column "Hole" of the table Parts');
    expect(() => bringFormulasBack(edited([head, ['Z9', '1/2', ''], b, c], 'A1:C4'))).toThrow('is not found');
  });
});

describe('a values copy for a customer', () => {
  it('holds no formula, no shop sheet, no name and no word of the shop', () => {
    const { bytes, sheets, names } = copied(file(), 'customer');
    const copy = openWorkbook(bytes);
    expect(copy.sheets.map(({ name }) => name)).toEqual(['Quote']);
    expect(formulasOf(copy)).toEqual({ Quote: [] });
    expect({ sheets, names, tables: copy.tables, left: copy.names }).toEqual({
      sheets: ['Shop'],
      names: ['ShopStamp'],
      tables: [],
      left: [],
    });
    const text = Object.values(partsOf(bytes)).join('\n');
    for (const secret of ['97.25', 'Hourly', 'xldudf', 'ShopStamp', 'rules 1', 'Presses'])
      expect(text).not.toContain(secret);
  });

  it('shows the same values in every cell that is left', () => {
    expect(readSheetValues(copied(file(), 'customer').bytes, 'Quote')).toEqual(
      readSheetValues(file(), 'Quote'),
    );
  });

  it('empties shared texts that only the shop used, and keeps the places of the others', () => {
    const parts = workbookParts([
      { name: 'Quote', sheetData: '<row r="1"><c r="A1" t="s"><v>1</v></c></row>' },
      {
        ...shop,
        sheetData: `<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="str"><f>_xldudf_TONROW_SHOP(Presses[#All])</f><v>x</v></c></row>`,
      },
    ]);
    parts['xl/sharedStrings.xml'] =
      `<sst xmlns="${MAIN}"><si><t>Secret margin</t></si><si><t>Hole</t></si></sst>`;
    parts['xl/_rels/workbook.xml.rels'] = (parts['xl/_rels/workbook.xml.rels'] ?? '').replace(
      '</Relationships>',
      '<Relationship Id="rIdS" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings" Target="sharedStrings.xml"/></Relationships>',
    );
    const { bytes } = copied(zipParts(parts), 'customer');
    expect(partsOf(bytes)['xl/sharedStrings.xml']).toBe(
      `<sst xmlns="${MAIN}"><si><t/></si><si><t>Hole</t></si></sst>`,
    );
    expect(readSheetValues(bytes, 'Quote')).toEqual([['Hole']]);
  });

  it('loses the prompt of the add-in, the properties and the links to other files', () => {
    const parts = workbookParts([quote, shop], { names: { ShopStamp: stamp } });
    parts['_rels/.rels'] = (parts['_rels/.rels'] ?? '').replace(
      '</Relationships>',
      '<Relationship Id="rIdW" Type="http://schemas.microsoft.com/office/2011/relationships/webextensiontaskpanes" Target="xl/webextensions/taskpanes.xml"/><Relationship Id="rIdP" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/extended-properties" Target="docProps/app.xml"/></Relationships>',
    );
    parts['xl/webextensions/taskpanes.xml'] = '<taskpanes/>';
    parts['docProps/app.xml'] = '<Properties><TitlesOfParts>Shop</TitlesOfParts></Properties>';
    parts['xl/calcChain.xml'] = '<calcChain/>';
    const { bytes, parts: gone } = copied(zipParts(parts), 'customer');
    expect(gone).toEqual(
      expect.arrayContaining(['xl/webextensions/taskpanes.xml', 'docProps/app.xml', 'xl/calcChain.xml']),
    );
    for (const name of gone) expect(Object.keys(partsOf(bytes))).not.toContain(name);
    expect(partsOf(bytes)['_rels/.rels']).not.toContain('webextension');
  });

  it('loses title, author, keywords, thumbnail and printer settings, and says what headers print', () => {
    const parts = workbookParts(
      [
        {
          ...quote,
          after:
            '<pageSetup orientation="landscape" r:id="rIdPr"/><headerFooter><oddHeader>&amp;L&amp;"Arial,Bold"Margin 12 %</oddHeader></headerFooter>',
        },
        shop,
      ],
      {
        names: { ShopStamp: stamp },
      },
    );
    const space = 'http://schemas.openxmlformats.org';
    parts['_rels/.rels'] = (parts['_rels/.rels'] ?? '').replace(
      '</Relationships>',
      `<Relationship Id="rIdC" Type="${space}/package/2006/relationships/metadata/core-properties" Target="docProps/core.xml"/><Relationship Id="rIdT" Type="${space}/package/2006/relationships/metadata/thumbnail" Target="docProps/thumbnail.jpeg"/></Relationships>`,
    );
    parts['docProps/core.xml'] =
      '<cp:coreProperties xmlns:cp="a" xmlns:dc="b"><dc:title>Secret tower</dc:title><dc:creator>Ann</dc:creator><cp:keywords>margin</cp:keywords></cp:coreProperties>';
    parts['docProps/thumbnail.jpeg'] = 'x';
    parts['xl/printerSettings/printerSettings1.bin'] = 'HP-OFFICE';
    parts['xl/worksheets/_rels/sheet1.xml.rels'] =
      `<Relationships xmlns="${space}/package/2006/relationships"><Relationship Id="rIdPr" Type="${space}/officeDocument/2006/relationships/printerSettings" Target="../printerSettings/printerSettings1.bin"/></Relationships>`;
    parts['xl/worksheets/sheet1.xml'] = (parts['xl/worksheets/sheet1.xml'] ?? '').replace(
      '<worksheet ',
      `<worksheet xmlns:r="${space}/officeDocument/2006/relationships" `,
    );
    const all = zipParts(parts);
    const { bytes, stays } = copied(all, 'customer');
    const left = partsOf(bytes);
    const text = Object.entries(left).flat().join('\n');
    for (const secret of ['Secret tower', 'Ann', 'thumbnail', 'HP-OFFICE', 'rIdPr', 'docProps'])
      expect(text).not.toContain(secret);
    expect(left['xl/worksheets/sheet1.xml']).toContain('<pageSetup orientation="landscape"/>');
    expect(stays).toEqual(['Page headers and footers: Margin 12 %.']);
    expect(copied(all, 'shop').stays).toEqual([
      'Page headers and footers: Margin 12 %.',
      'Settings of a printer.',
      'A small picture of the first sheet.',
      "The file's title: Secret tower.",
      "The file's author: Ann.",
      "The file's keywords: margin.",
    ]);
  });

  it('takes out rules and links that mention the shop, and counts the rest', () => {
    const rule = (sqref: string, list: string) =>
      `<dataValidation type="list" sqref="${sqref}"><formula1>${list}</formula1></dataValidation>`;
    const after = `<dataValidations count="2">${rule('A1', 'Shop!$A$2:$A$3')}${rule('A2', '"yes,no"')}</dataValidations>`;
    const { bytes } = copied(file([{ ...quote, after }, shop]), 'customer');
    const xml = partsOf(bytes)['xl/worksheets/sheet1.xml'] ?? '';
    expect(xml).toContain('<dataValidations count="1">');
    expect(xml).not.toContain('Shop!');
    expect(xml).toContain('"yes,no"');
  });

  it('says what a reader may still find', () => {
    const hidden: BuiltSheet = { name: 'Costs', rows: [['a']], state: 'hidden' };
    const { stays } = copied(file([quote, shop, hidden]), 'customer');
    expect(stays).toEqual(['Hidden sheets: Costs.']);
  });

  it('is refused where the shop stands among the parts', () => {
    const mixed: BuiltSheet = {
      ...shop,
      rows: [...(shop.rows ?? []), [formula('_xldudf_TONROW_ROWCHECK(A1:B1,A2:B2,B1)', 'OK')]],
    };
    expect(() => copied(file([quote, mixed]), 'customer')).toThrow('move them to a sheet of their own first');
  });

  it('is refused where nothing but the shop would be left', () => {
    expect(() => copied(file([shop]), 'customer')).toThrow('would have no sheet');
  });
});

/** The mark of a cell that spills may stand elsewhere among the attributes of its cell. */
const unmarked = (text = '') => text.replaceAll(' cm="1"', '');

describe('copies of the example quote', () => {
  let bytes: Uint8Array;
  beforeAll(async () => {
    bytes = await recalculatedQuoteFile();
  });

  it('bring every formula of the shop copy back as it was', () => {
    const copy = copied(bytes, 'shop');
    expect(copy.formulas).toBeGreaterThan(100);
    const back = bringFormulasBack(copy.bytes);
    expect(back.restored).toBe(copy.formulas);
    const [before, after] = [partsOf(bytes), partsOf(back.bytes)];
    for (const [name, text] of Object.entries(before))
      expect(unmarked(after[name]) === unmarked(text), name).toBe(true);
  });

  it('leave the customer the numbers and nothing of the shop', () => {
    const copy = copied(bytes, 'customer');
    for (const name of ['Quote', 'Summary', 'List check'])
      expect(readSheetValues(copy.bytes, name)).toEqual(readSheetValues(bytes, name));
    const text = Object.values(partsOf(copy.bytes)).join('\n');
    for (const secret of ['<f>', '<f ', 'xldudf', 'Hourly rate', 'Punch throat', 'ShopStamp'])
      expect(text).not.toContain(secret);
  });

  it.each(['shop', 'customer'] as const)(
    'are read by another library, %s: none of our formulas, the same words',
    async (kind) => {
      const copy = await read(copied(bytes, kind).bytes);
      const [formulas, texts] = [[] as string[], [] as string[]];
      copy.getWorksheet('Quote')?.eachRow((row) =>
        row.eachCell((cell) => {
          if (cell.formula) formulas.push(cell.formula);
          texts.push(cell.text);
        }),
      );
      expect(formulas.filter((text) => kind === 'customer' || text.includes('TONROW'))).toEqual([]);
      const words = readSheetValues(bytes, 'Quote')
        .flat()
        .filter((value) => typeof value === 'string' && value !== '');
      expect(texts.filter((text) => words.includes(text)).length).toBeGreaterThanOrEqual(words.length);
    },
  );
});

async function read(bytes: Uint8Array): Promise<ExcelJS.Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(bytes.slice().buffer);
  return workbook;
}

describe('what a copy for a customer leaves out', () => {
  const secret = 'Hole: end distance 7/8 in is under 1-1/4 in of Bay A';
  const check = (item: string) => `_xldudf_TONROW_ROWCHECK($A$1:$B$1,A2:B2,ShopStamp,"${item}")`;
  const listed = 'Reach of Bay B is 12 in, and 14 in are asked';
  const parts: BuiltSheet = {
    name: 'Quote',
    rows: [
      ['Section', 'Note', 'Verdict', 'Note', 'Minutes', 'Copied', 'Looked up'],
      [
        'FB3/8X3',
        'paint gray, please and thank you',
        formula(check('verdict'), 'Edge short'),
        formula(check('note'), secret),
        formula(check('minutes'), 7.25),
        formula('E2*2', 14.5),
        formula("INDEX('List check'!$B:$B,ROW()-ROW($A$1)+1)", listed),
      ],
    ],
  };
  const list: BuiltSheet = {
    name: 'List check',
    rows: [
      [
        spilling('_xldudf_TONROW_LISTCHECK(Quote!A1:B2,ShopStamp,"verdict,note")', 'A1:B2', 'Verdict'),
        spilled('Note'),
      ],
      [spilled('Edge short'), spilled(listed)],
    ],
  };
  const bytes = file([parts, list, shop]);
  const out = (leaveOut: readonly string[]) => valuesCopy(bytes, { kind: 'customer', leaveOut });

  it('is in no part of the file; what the user typed under the same heading stays', () => {
    const copy = out(['note', 'minutes']);
    const all = Object.values(partsOf(copy.bytes)).join('\n');
    expect(Object.values(partsOf(out([]).bytes)).join('\n')).toContain(secret);
    for (const text of [secret, listed, '7.25']) expect(all).not.toContain(text);
    const [, row] = readSheetValues(copy.bytes, 'Quote');
    expect(row?.slice(0, 6)).toEqual([
      'FB3/8X3',
      'paint gray, please and thank you',
      'Edge short',
      null,
      null,
      14.5,
    ]);
    expect(
      readSheetValues(copy.bytes, 'List check')
        .flat()
        .filter((value) => value !== null),
    ).toEqual(['Verdict', 'Edge short']);
    expect(copy.emptied).toEqual(['Quote, Note', 'Quote, Minutes', 'Quote, Looked up', 'List check, B']);
    expect(copy.stays).toContain('what other cells calculate from these columns');
  });

  it('is told of where its text stands in another cell', () => {
    const again: BuiltSheet = { name: 'Summary', rows: [[formula('Quote!D2', secret)]] };
    const copy = valuesCopy(file([parts, list, again, shop]), { kind: 'customer', leaveOut: ['note'] });
    expect(copy.stays).toContain('Texts of these columns stand in other cells too: Summary!A1.');
  });

  it('is told of the sheets that add it up by name', () => {
    const sums: BuiltSheet = {
      name: 'Sums',
      rows: [['Edge short', formula('SUMIF(Parts[Verdict],"=Edge short",Parts[Qty])', 3)]],
    };
    const stays = (leaveOut: string[]) =>
      valuesCopy(file([parts, list, sums, shop]), { kind: 'customer', leaveOut }).stays;
    const said = 'The sheet Sums calculates from these columns: it may name presses and verdicts.';
    expect(stays(['verdict'])).toContain(said);
    for (const others of [['minutes'], []]) expect(stays(others)).not.toContain(said);
  });

  it('is nothing where nothing is ticked, or the copy is for the shop', () => {
    expect(out([]).emptied).toEqual([]);
    expect(valuesCopy(bytes, { kind: 'shop', leaveOut: ['note'] }).emptied).toEqual([]);
  });

  it('is in no copy of the example: no note of a row, no sentence that is only there', async () => {
    const quoteBytes = await recalculatedQuoteFile();
    const { sheets } = openWorkbook(quoteBytes);
    const notes = (sheets.find(({ name }) => name === 'Quote')?.cells?.values ?? []).filter(
      (value): value is string => typeof value === 'string' && value.includes('Understood as'),
    );
    expect(notes.length).toBeGreaterThan(20);
    const copy = valuesCopy(quoteBytes, { kind: 'customer', leaveOut: ['note'] });
    const all = Object.values(partsOf(copy.bytes)).join('\n');
    expect(all).not.toContain('Understood as');
  });
});
