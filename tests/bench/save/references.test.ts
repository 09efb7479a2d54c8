import '../support/engineOnNode.js';
import type { AddColumnsRowsCommand } from '@odoo/o-spreadsheet';
import { describe, expect, it } from 'vitest';
import { cellLook, openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { sheetNow } from '../../../src/bench/open/givenSheet.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { readSheetValues } from '../../../src/xlsx/readSheetValues.js';
import { zipParts } from '../../xlsx/support/buildWorkbook.js';
import { cell, exampleBytes, functions, openExample, savedExample } from '../support/openExample.js';
import { partOf, sheetParts } from '../support/styledWorkbook.js';

const office = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';

/** Everything that stands on cells by their address. */
const sheet =
  '<dimension ref="A1:D6"/><sheetViews><sheetView workbookViewId="0"><selection activeCell="B3" sqref="B3"/></sheetView></sheetViews>' +
  '<cols><col min="2" max="3" width="20" style="2" customWidth="1"/></cols>' +
  '<sheetData><row r="1" spans="1:4"><c r="A1" s="1" t="inlineStr"><is><t>Heading</t></is></c></row>' +
  '<row r="3" ht="30" customHeight="1" s="1" customFormat="1"><c r="A3"><v>1</v></c><c r="B3"><f t="shared" ref="B3:B5" si="0">A3*2</f><v>2</v></c><c r="C3" s="1"/></row>' +
  '<row r="4"><c r="A4"><v>2</v></c><c r="B4"><f t="shared" si="0"/><v>4</v></c></row>' +
  '<row r="5"><c r="A5"><v>3</v></c><c r="B5"><f t="shared" si="0"/><v>6</v></c></row>' +
  '<row r="6" hidden="1"><c r="A6"><f>_xlfn.LET(_xlpm.x,A3,_xlpm.x)</f><v>1</v></c></row></sheetData>' +
  '<mergeCells count="1"><mergeCell ref="C4:D5"/></mergeCells>' +
  '<conditionalFormatting sqref="A3:A5 C1"><cfRule type="expression" dxfId="0" priority="1"><formula>$A3&gt;$A$5</formula></cfRule></conditionalFormatting>' +
  '<dataValidations count="2"><dataValidation type="list" sqref="A4"><formula1>$A$3:$A$5</formula1></dataValidation><dataValidation type="whole" sqref="A3:A1048576"><formula1>1</formula1></dataValidation></dataValidations>' +
  '<hyperlinks><hyperlink ref="A5" location="Data!A1" display="up"/></hyperlinks><legacyDrawing r:id="rIdV"/>';

const notes =
  '<comments xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><authors><author>A</author></authors><commentList><comment ref="A4" authorId="0"><text><t>Look</t></text></comment></commentList></comments>';
const shapes =
  '<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shape id="s1"><x:ClientData ObjectType="Note"><x:Anchor>1, 15, 3, 10, 3, 15, 7, 4</x:Anchor><x:Row>3</x:Row><x:Column>0</x:Column></x:ClientData></v:shape></xml>';

const packageOf = (): Uint8Array =>
  zipParts({
    ...sheetParts(sheet, {
      'xl/comments1.xml': notes,
      'xl/drawings/vml1.vml': shapes,
      'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rIdC" Type="${office}/comments" Target="../comments1.xml"/><Relationship Id="rIdV" Type="${office}/vmlDrawing" Target="../drawings/vml1.vml"/></Relationships>`,
    }),
  });

const opened = (): OpenBook => openBook(packageOf(), functions);
const part = (bytes: Uint8Array) => partOf(bytes, 'xl/worksheets/sheet1.xml');
const add = (open: OpenBook, dimension: 'ROW' | 'COL', base: number, quantity = 1) => {
  const command: Omit<AddColumnsRowsCommand, 'type'> = {
    sheetId: 'sheet1',
    sheetName: 'Data',
    dimension,
    base,
    position: 'before',
    quantity,
  };
  expect(open.book.model.dispatch('ADD_COLUMNS_ROWS', command).isSuccessful).toBe(true);
};
const remove = (open: OpenBook, dimension: 'ROW' | 'COL', elements: number[]) =>
  open.book.model.dispatch('REMOVE_COLUMNS_ROWS', {
    sheetId: 'sheet1',
    sheetName: 'Data',
    dimension,
    elements,
  });

describe('saving a sheet into which rows were put', () => {
  it('changes nothing when nothing was changed', () => {
    expect(saveBook(opened()).bytes).toEqual(packageOf());
  });

  it('moves the cells with their own styles, and the rows with theirs', () => {
    const open = opened();
    add(open, 'ROW', 1, 2);
    const { bytes, notes } = saveBook(open);
    expect(notes).toEqual([]);
    const xml = part(bytes);
    expect(xml).toContain(
      '<row r="5" ht="30" customHeight="1" s="1" customFormat="1"><c r="A5"><v>1</v></c>',
    );
    expect(xml).toContain('<c r="C5" s="1"/>');
    expect(xml).toContain('<row r="8" hidden="1">');
    const again = openBook(bytes, functions);
    const now = sheetNow(again.book.model, 'sheet1');
    expect(now.rows.slice(0, 8)).toEqual(sheetNow(open.book.model, 'sheet1').rows.slice(0, 8));
    for (const address of ['A1', 'A5', 'B5', 'C5', 'A6', 'A8', 'C6'])
      expect(cellLook(again.book, cell(again.book, 'Data', address))).toEqual(
        cellLook(open.book, cell(open.book, 'Data', address)),
      );
    expect(readSheetValues(bytes, 'Data')).toEqual([
      ['Heading'],
      [],
      [],
      [],
      [1, 2, null],
      [2, 4],
      [3, 6],
      [1],
    ]);
  });

  it('moves rules, lists, links, notes and merged cells along, with their formulas', () => {
    const open = opened();
    add(open, 'ROW', 1, 2);
    const { bytes } = saveBook(open);
    const xml = part(bytes);
    expect(xml).toContain('<dimension ref="A1:D8"/>');
    expect(xml).toContain('<selection activeCell="B5" sqref="B5"/>');
    expect(xml).toContain('<mergeCells count="1"><mergeCell ref="C6:D7"/></mergeCells>');
    expect(xml).toContain('sqref="A5:A7 C1"');
    expect(xml).toContain('<formula>$A5&gt;$A$7</formula>');
    expect(xml).toContain('sqref="A6"><formula1>$A$5:$A$7</formula1>');
    expect(xml).toContain('sqref="A5:A1048576"');
    expect(xml).toContain('<hyperlink ref="A7" location="Data!A1"');
    expect(partOf(bytes, 'xl/comments1.xml')).toContain('ref="A6"');
    expect(partOf(bytes, 'xl/drawings/vml1.vml')).toContain('<x:Row>5</x:Row><x:Column>0</x:Column>');
    expect(partOf(bytes, 'xl/drawings/vml1.vml')).toContain('<x:Anchor>1, 15, 5, 10, 3, 15, 9, 4</x:Anchor>');
  });

  it('moves formulas, also those that are stored together or not calculated here', () => {
    const open = opened();
    add(open, 'ROW', 3);
    const { bytes } = saveBook(open);
    const cells = openWorkbook(bytes).sheets[0]?.cells;
    const text = (row: number, column: number) => {
      const i = cells?.index.get(row * 16_384 + column) ?? -1;
      return cells?.formulas[i]?.text;
    };
    expect([text(2, 1), text(3, 1), text(4, 1), text(5, 1)]).toEqual(['A3*2', undefined, 'A5*2', 'A6*2']);
    expect(text(6, 0)).toBe('_xlfn.LET(_xlpm.x,A3,_xlpm.x)');
    const further = openBook(bytes, functions);
    add(further, 'ROW', 0);
    const moved = openWorkbook(saveBook(further).bytes).sheets[0]?.cells;
    expect(moved?.formulas[moved.index.get(7 * 16_384) ?? -1]?.text).toBe('_xlfn.LET(_xlpm.x,A4,_xlpm.x)');
  });

  it('is the file again when it is undone', () => {
    const open = opened();
    add(open, 'ROW', 1, 2);
    add(open, 'COL', 0);
    open.book.model.dispatch('REQUEST_UNDO');
    open.book.model.dispatch('REQUEST_UNDO');
    expect(saveBook(open).bytes).toEqual(packageOf());
  });
});

describe('saving a sheet from which rows and columns went', () => {
  it('takes out what was about them alone', () => {
    const open = opened();
    remove(open, 'ROW', [3, 4]);
    const { bytes } = saveBook(open);
    const xml = part(bytes);
    expect(readSheetValues(bytes, 'Data')).toEqual([['Heading'], [], [1, 2, null], [1]]);
    expect(xml).not.toContain('mergeCell');
    expect(xml).not.toContain('hyperlink');
    expect(xml).toContain('<dataValidations count="1">');
    expect(xml).toContain('sqref="A3 C1"');
    expect(xml).toContain('<formula>$A3&gt;#REF!</formula>');
    expect(partOf(bytes, 'xl/comments1.xml')).not.toContain('<comment ref');
    expect(partOf(bytes, 'xl/drawings/vml1.vml')).not.toContain('v:shape ');
    expect(saveBook(openBook(bytes, functions)).bytes).toEqual(bytes);
  });

  it('moves columns with their widths and styles', () => {
    const open = opened();
    add(open, 'COL', 1);
    remove(open, 'COL', [3]);
    const { bytes } = saveBook(open);
    expect(part(bytes)).toContain(
      '<cols><col min="2" max="2" width="20" customWidth="1"/><col min="3" max="3" width="20" style="2" customWidth="1"/></cols>',
    );
    const cells = openWorkbook(bytes).sheets[0]?.cells;
    const moved = cells?.index.get(2 * 16_384 + 2) ?? -1;
    expect([cells?.formulas[moved]?.text, cells?.values[moved]]).toEqual(['A3*2', 2]);
    expect(saveBook(openBook(bytes, functions)).bytes).toEqual(bytes);
  });
});

describe('saving color rules', () => {
  const rules = (open: OpenBook) => {
    const { sheetId } = cell(open.book, 'Quote', 'A1');
    return open.book.getters.getConditionalFormats(sheetId).map(({ id, ranges }) => ({ id, ranges }));
  };

  it('has them on cells that were copied to where there were none, with the same colors', () => {
    const open = openExample();
    const before = rules(open);
    const { model } = open.book;
    model.selection.selectCell(0, 5);
    model.dispatch('COPY');
    model.dispatch('PASTE', { target: [{ top: 59, bottom: 59, left: 17, right: 17 }] });
    expect(rules(open)).not.toEqual(before);
    const { bytes } = saveBook(open);
    expect(rules(openBook(bytes, functions)).map(({ ranges }) => [...ranges].sort())).toEqual(
      rules(open).map(({ ranges }) => [...ranges].sort()),
    );
    expect(part(bytes)).toMatch(/sqref="[^"]*R60[^"]*"/);
  });

  it('leaves them as they are otherwise', () => {
    const bytes = part(savedExample());
    const ranges = (xml: string) => xml.match(/<conditionalFormatting sqref="[^"]*"/g);
    expect(ranges(bytes)).toEqual(ranges(partOf(exampleBytes(), 'xl/worksheets/sheet1.xml')));
    expect(ranges(bytes)?.length).toBeGreaterThan(0);
  });
});

describe('saving an example list into which a row was put', () => {
  it('keeps the style of every cell', () => {
    const open = openExample();
    const { sheetId } = cell(open.book, 'Quote', 'A1');
    const looks = (book: OpenBook) =>
      Array.from({ length: 60 }, (_, row) =>
        Array.from({ length: 26 }, (__, col) => cellLook(book.book, { sheetId, row, col }).shown),
      );
    open.book.model.dispatch('ADD_COLUMNS_ROWS', {
      sheetId,
      sheetName: 'Quote',
      dimension: 'ROW',
      base: 3,
      position: 'before',
      quantity: 1,
    });
    const before = looks(open);
    const { bytes } = saveBook(open);
    expect(looks(openBook(bytes, functions))).toEqual(before);
    expect(partOf(bytes, 'xl/styles.xml')).toBe(partOf(savedExample(), 'xl/styles.xml'));
  });
});
