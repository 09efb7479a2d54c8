import { readFileSync } from 'node:fs';
import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { emptyWorkbook } from '../../examples/build/workbook.mjs';
import { valuesCopy } from '../../src/xlsx/freeze/valuesCopy.js';
import { bringFormulasBack } from '../../src/xlsx/freeze/bringFormulasBack.js';
import { pressChange, recalculatedQuote, workbookFile } from '../golden/quote.js';
import { violations } from '../support/packageReferee.js';
import { zipParts } from '../xlsx/support/buildWorkbook.js';

const example = new Uint8Array(readFileSync(workbookFile));
const parts = () =>
  Object.fromEntries(Object.entries(unzipSync(example)).map(([name, part]) => [name, strFromU8(part)]));

describe('every workbook that is written', () => {
  it('keeps the rules of its format: the example, an empty one, copies, and formulas brought back', async () => {
    expect(violations(example)).toEqual([]);
    expect(violations(new Uint8Array(emptyWorkbook()))).toEqual([]);
    const { bytes } = await recalculatedQuote([pressChange('Punch force', 'Bay A', 40)]);
    expect(violations(bytes)).toEqual([]);
    const copy = valuesCopy(bytes, { kind: 'shop' });
    expect(violations(copy.bytes)).toEqual([]);
    expect(violations(valuesCopy(bytes, { kind: 'customer' }).bytes)).toEqual([]);
    expect(violations(bringFormulasBack(copy.bytes).bytes)).toEqual([]);
  });
});

const book = 'xl/workbook.xml';
const quote = 'xl/worksheets/sheet1.xml';
const table = 'xl/tables/table1.xml';

/** Something wrong put into a part of the example, and what the referee says of it. */
const broken: [name: string, part: string, from: string | RegExp, to: string, says: string][] = [
  ['XML', quote, '</sheetData>', '', 'is not well formed'],
  [
    'content types',
    '[Content_Types].xml',
    /<Override PartName="\/xl\/styles.xml"[^>]*>/,
    '<Override PartName="/xl/gone.xml" ContentType="a"/>',
    '/xl/gone.xml is not there',
  ],
  [
    'a relationship to nothing',
    'xl/_rels/workbook.xml.rels',
    'styles.xml',
    'gone.xml',
    'leads to xl/gone.xml',
  ],
  ['a relationship that is not there', quote, 'r:id="rId1"', 'r:id="rId9"', 'names the relationship rId9'],
  [
    'two relationships of one id',
    'xl/_rels/workbook.xml.rels',
    'Id="rId2"',
    'Id="rId1"',
    'rId1 stands twice',
  ],
  [
    'order in the workbook',
    book,
    /(<sheets>.*<\/sheets>)(<definedNames>.*<\/definedNames>)/,
    '$2$1',
    'out of order',
  ],
  ['a long name of a sheet', book, 'name="Summary"', `name="${'S'.repeat(32)}"`, 'is no name of a sheet'],
  ['a reserved name of a sheet', book, 'name="Summary"', 'name="History"', 'is no name of a sheet'],
  ['two sheets of one name', book, 'name="Summary"', 'name="quote"', 'two sheets are called quote'],
  ['two sheets of one id', book, 'sheetId="2"', 'sheetId="1"', 'two sheets have the id 1'],
  ['no sheet that shows', book, /<sheet /g, '<sheet state="hidden" ', 'shows no sheet'],
  ['a tab that is none', book, '<workbookView ', '<workbookView activeTab="9" ', 'activeTab is no sheet'],
  ['a name that is an address', book, 'name="ShopStamp"', 'name="AB12"', 'AB12 is no name'],
  ['a name of no sheet', book, '<definedName ', '<definedName localSheetId="7" ', 'is of no sheet'],
  [
    'order in a sheet',
    quote,
    /(<sheetData>.*<\/sheetData>)(.*?)(<pageMargins[^>]*>)/s,
    '$3$1$2',
    'out of order',
  ],
  ['rows out of order', quote, '<row r="2"', '<row r="9"', 'is out of'],
  ['a cell in another row', quote, 'r="A6"', 'r="A7"', 'is out of place'],
  ['an attribute of a cell', quote, '<c r="A6"', '<c foo="1" r="A6"', 'has the attribute foo'],
  ['an attribute of a value', quote, '<v>', '<v xml:space="preserve">', 'has attributes on its value'],
  ['a type of a cell', quote, 't="s"', 't="x"', 'is of the type x'],
  ['a style that is none', quote, / s="\d+"/, ' s="99"', 'has a style that is none'],
  ['a text that is none', quote, 't="s"><v>0</v>', 't="s"><v>99999</v>', 'has the text 99999'],
  ['a mark that is none', 'xl/worksheets/sheet2.xml', 'cm="1"', 'cm="4"', 'has a mark that is none'],
  ['a long text', 'xl/sharedStrings.xml', '<t>', `<t>${'x'.repeat(32_768)}`, 'too long'],
  ['a long formula', quote, '<f>', `<f>${'1+'.repeat(4_100)}1+`, 'a formula that is too long'],
  [
    'this row as people write it',
    quote,
    'Parts[[#This Row],[Mark]:[Press]]',
    'Parts[@[Mark]:[Press]]',
    'writes @ for this row',
  ],
  ['a row of no table', quote, 'Parts[[#This Row],[Mark]:[Press]]', '[#This Row]', 'names a row of no table'],
  ['a function as people write it', quote, '_xldudf_TONROW_', 'TONROW.', 'as people read it'],
  ['a count', quote, /<tableParts count="1"/, '<tableParts count="2"', 'tableParts says 2 and holds 1'],
  ['a count of styles', 'xl/styles.xml', /<cellXfs count="\d+"/, '<cellXfs count="3"', 'cellXfs says 3'],
  ['a font that is none', 'xl/styles.xml', 'fontId="1"', 'fontId="77"', 'fontId is none'],
  ['a rule without its format', quote, /dxfId="\d"/, 'dxfId="42"', 'the format 42, which is none'],
  ['a table without data', table, /ref="A5:([A-Z]+)\d+"/g, 'ref="A5:$15"', 'has no row of data'],
  ['too few columns', table, /<tableColumn id="\d+" name="Mark"\/>/, '', 'columns in'],
  ['a heading that is another', table, 'name="Mark"', 'name="Marke"', 'the heading of "Marke" is "Mark"'],
  ['a line break in a heading', table, 'name="Mark"', 'name="Ma&#10;rk"', 'a line break in a name'],
  ['two columns of one name', table, 'name="Drawing"', 'name="mark"', 'two columns are mark'],
  [
    'a name of a table that is taken',
    table,
    'displayName="Parts"',
    'displayName="ShopStamp"',
    'is the name of a defined name',
  ],
  [
    'a filter beyond its table',
    table,
    /<autoFilter ref="A5:([A-Z]+)(\d+)"/,
    '<autoFilter ref="A5:$1999"',
    'filters A5',
  ],
  ['two tables of one id', 'xl/tables/table2.xml', ' id="2"', ' id="1"', 'has the id 1 of another table'],
  ['tables that overlap', 'xl/tables/table3.xml', /ref="F6:/g, 'ref="D6:', 'tables overlap'],
];

describe('the referee of packages', () => {
  it.each(broken)('catches %s', (_, part, from, to, says) => {
    const all = parts();
    const before = all[part] ?? '';
    all[part] = before.replace(from, to);
    expect(all[part]).not.toBe(before);
    expect(violations(zipParts(all)).join('\n')).toContain(says);
  });

  it('catches a part that nothing gives a type', () => {
    expect(violations(zipParts({ ...parts(), 'xl/media/a.bin': 'x' }))).toContain(
      'xl/media/a.bin: has no content type',
    );
  });
});
