import '../support/engineOnNode.js';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { GridWorkbook } from '../../../src/bench/port/gridWorkbook.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import type { Content } from '../../../src/workbook/content.js';
import type { Step } from '../../../src/workbook/step.js';
import { sheetNow } from '../../../src/bench/open/givenSheet.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { parseZone } from '../../../src/sheet/address.js';
import { readSheetValues } from '../../../src/xlsx/readSheetValues.js';
import { buildWorkbook, formula } from '../../xlsx/support/buildWorkbook.js';
import { cell, functions, openExample, savedExample } from '../support/openExample.js';
import { partNames, partOf, withPart } from '../support/styledWorkbook.js';

const idOf = (open: OpenBook, sheet: string) => cell(open.book, sheet, 'A1').sheetId;
const now = (open: OpenBook, sheet: string) => sheetNow(open.book.model, idOf(open, sheet));

async function readByOthers(bytes: Uint8Array): Promise<ExcelJS.Workbook> {
  const workbook = new ExcelJS.Workbook();
  await workbook.xlsx.load(bytes as never);
  return workbook;
}

describe('saving a new sheet with a table', () => {
  it('names the parts as other programs do, so that they find them', async () => {
    const open = openExample();
    const port = new GridWorkbook(open.book);
    const area = { sheet: 'More', row: 0, column: 0, rows: 2, columns: 2 };
    const contents = [
      ['Mark', 'Qty'],
      ['P1', 2],
    ];
    const steps: Step[] = [
      { kind: 'sheet', name: 'More' },
      { kind: 'cells', area, contents },
      { kind: 'table', name: 'Extra', area },
    ];
    await port.write(await port.plan(steps));
    const sheet = (await readByOthers(saveBook(open).bytes)).getWorksheet('More');
    expect(sheet?.getTable('Extra').name).toBe('Extra');
    expect(sheet?.getCell('B2').value).toBe(2);
  });
});

describe('saving columns of formulas in a table', () => {
  it('gives programs the formula for rows that are added, where every row has the same', async () => {
    const open = openExample();
    const port = new GridWorkbook(open.book);
    const formula = '=TONROW.PUNCHFORCE([@Hole],[@Thickness],"A36")';
    const area = { sheet: 'More', row: 0, column: 0, rows: 3, columns: 2 };
    const contents = [
      ['Hole', 'Thickness'],
      ['13/16 in', '3/8 in'],
      ['9/16 in', '1/4 in'],
    ];
    const steps: Step[] = [
      { kind: 'sheet', name: 'More' },
      { kind: 'cells', area, contents },
      { kind: 'table', name: 'Extra', area },
    ];
    await port.write(await port.plan(steps));
    const column = (heading: string, formulas: Content[]): Step => ({
      ...{ kind: 'column', table: 'Extra', heading, contents: formulas },
    });
    const same = [{ formula }, { formula }];
    const others = [{ formula: '=ROW(Extra[@Hole])' }, { formula: '=2*ROW(Extra[@Hole])' }];
    await port.write(await port.plan([column('Force', same), column('Other', others)]));
    const added: Step = { kind: 'column', table: 'Parts', heading: 'Extra', contents: [] };
    await port.write(await port.plan([added]));
    const { bytes } = saveBook(open);
    const part = partNames(bytes).find((name) => partOf(bytes, name).includes('displayName="Extra"')) ?? '';
    expect(partOf(bytes, part)).toContain(
      '<tableColumn id="3" name="Force"><calculatedColumnFormula>' +
        '_xldudf_TONROW_PUNCHFORCE(Extra[[#This Row],[Hole]],Extra[[#This Row],[Thickness]],&quot;A36&quot;)' +
        '</calculatedColumnFormula></tableColumn><tableColumn id="4" name="Other"/>',
    );
    expect(partOf(bytes, 'xl/tables/table1.xml')).toContain('name="Extra"/>');
    expect((await readByOthers(bytes)).getWorksheet('More')?.getTable('Extra').name).toBe('Extra');
  });
});

describe('saving widths and heights', () => {
  it('stores a column and a row that were made wider and higher, the others as they were', async () => {
    const open = openExample();
    const sheetId = idOf(open, 'Quote');
    const before = now(open, 'Quote');
    open.book.model.dispatch('RESIZE_COLUMNS_ROWS', {
      sheetId,
      dimension: 'COL',
      elements: [3, 30],
      size: 155,
    });
    open.book.model.dispatch('RESIZE_COLUMNS_ROWS', {
      sheetId,
      dimension: 'ROW',
      elements: [6, 70],
      size: 40,
    });
    const { bytes } = saveBook(open);
    const after = now(openBook(bytes, functions), 'Quote');
    expect([after.columns[3]?.size, after.columns[30]?.size]).toEqual([155, 155]);
    expect([after.rows[6]?.size, after.rows[70]?.size]).toEqual([40, 40]);
    const others = ({ rows, columns }: typeof before) => [
      columns.filter((_, at) => at !== 3 && at !== 30),
      rows.filter((_, at) => at !== 6 && at !== 70),
    ];
    expect(others(after)).toEqual(others(before));
    const sheet = (await readByOthers(bytes)).getWorksheet('Quote');
    expect(sheet?.getColumn(4).width).toBe(20);
    expect(sheet?.getRow(7).height).toBe(30);
    expect(partOf(bytes, 'xl/worksheets/sheet1.xml')).toContain('<row r="71" ht="30" customHeight="1"/>');
  });

  it('stores what was hidden and shown again', () => {
    const open = openExample();
    const sheetId = idOf(open, 'Quote');
    const { model } = open.book;
    model.dispatch('HIDE_COLUMNS_ROWS', { sheetId, dimension: 'COL', elements: [4, 5] });
    model.dispatch('HIDE_COLUMNS_ROWS', { sheetId, dimension: 'ROW', elements: [7] });
    const again = openBook(saveBook(open).bytes, functions);
    expect(
      now(again, 'Quote')
        .columns.map(({ hidden }) => hidden)
        .indexOf(true),
    ).toBe(4);
    expect(now(again, 'Quote').rows[7]?.hidden).toBe(true);
    again.book.model.dispatch('UNHIDE_COLUMNS_ROWS', { sheetId, dimension: 'COL', elements: [4, 5] });
    again.book.model.dispatch('UNHIDE_COLUMNS_ROWS', { sheetId, dimension: 'ROW', elements: [7] });
    expect(saveBook(again).bytes.length).toBeGreaterThan(0);
    expect(partOf(saveBook(again).bytes, 'xl/worksheets/sheet1.xml')).toBe(
      partOf(savedExample(), 'xl/worksheets/sheet1.xml'),
    );
  });
});

describe('saving panes, grid lines, merged cells and tab colors', () => {
  it('stores frozen panes, also when they are taken away', async () => {
    const open = openExample();
    const sheetId = idOf(open, 'Quote');
    open.book.model.dispatch('FREEZE_ROWS', { sheetId, quantity: 2 });
    open.book.model.dispatch('FREEZE_COLUMNS', { sheetId: idOf(open, 'Summary'), quantity: 3 });
    const { bytes } = saveBook(open);
    const again = openBook(bytes, functions);
    expect(now(again, 'Quote').frozen).toEqual({ rows: 2, columns: 2 });
    expect(now(again, 'Summary').frozen).toMatchObject({ columns: 3 });
    const [view] = (await readByOthers(bytes)).getWorksheet('Quote')?.views ?? [];
    expect(view).toMatchObject({ state: 'frozen', xSplit: 2, ySplit: 2, topLeftCell: 'C3' });
    again.book.model.dispatch('UNFREEZE_COLUMNS_ROWS', { sheetId });
    const third = saveBook(again).bytes;
    expect(now(openBook(third, functions), 'Quote').frozen).toEqual({ rows: 0, columns: 0 });
    expect(partOf(third, 'xl/worksheets/sheet1.xml')).not.toMatch(/<pane|<selection/);
  });

  it('stores grid lines that were hidden and the color of a tab', async () => {
    const open = openExample();
    const sheetId = idOf(open, 'Quote');
    open.book.model.dispatch('SET_GRID_LINES_VISIBILITY', { sheetId, areGridLinesVisible: false });
    open.book.model.dispatch('COLOR_SHEET', { sheetId, color: '#3366CC' });
    const { bytes } = saveBook(open);
    const again = openBook(bytes, functions);
    expect(now(again, 'Quote')).toMatchObject({ gridLines: false, color: '#3366CC' });
    const sheet = (await readByOthers(bytes)).getWorksheet('Quote');
    expect(sheet?.views[0]?.showGridLines).toBe(false);
    expect(sheet?.properties.tabColor?.argb).toBe('FF3366CC');
    again.book.model.dispatch('SET_GRID_LINES_VISIBILITY', { sheetId, areGridLinesVisible: true });
    again.book.model.dispatch('COLOR_SHEET', { sheetId, color: undefined as never });
    expect(partOf(saveBook(again).bytes, 'xl/worksheets/sheet1.xml')).toBe(
      partOf(savedExample(), 'xl/worksheets/sheet1.xml'),
    );
  });

  it('stores merged cells, and takes them away', async () => {
    const open = openExample();
    const sheetId = idOf(open, 'Summary');
    const target = [parseZone('K40:M41') as never];
    open.book.model.dispatch('ADD_MERGE', { sheetId, target });
    const { bytes } = saveBook(open);
    const again = openBook(bytes, functions);
    expect(again.book.getters.getMerges(sheetId)).toMatchObject([
      { top: 39, bottom: 40, left: 10, right: 12 },
    ]);
    expect((await readByOthers(bytes)).getWorksheet('Summary')?.getCell('M41').isMerged).toBe(true);
    again.book.model.dispatch('REMOVE_MERGE', { sheetId, target });
    expect(partOf(saveBook(again).bytes, 'xl/worksheets/sheet3.xml')).not.toContain('mergeCell');
  });

  it('leaves what the file has inside merged cells, which the grid does not show', () => {
    const bytes = buildWorkbook([
      {
        name: 'M',
        rows: [['a', 'behind', 3]],
        after: '<mergeCells count="1"><mergeCell ref="A1:B1"/></mergeCells>',
      },
    ]);
    const open = openBook(bytes, functions);
    expect(saveBook(open).bytes).toEqual(bytes);
  });
});

describe('saving the list of sheets', () => {
  it('stores another order, with what hangs on the places of sheets', () => {
    const open = openBook(
      buildWorkbook(
        [
          { name: 'One', rows: [[1]] },
          { name: 'Two', rows: [[formula('One!A1+1', 2)]] },
          { name: 'Three', rows: [[3]] },
        ],
        { workbook: '<bookViews><workbookView activeTab="1"/></bookViews>' },
      ),
      functions,
    );
    open.book.model.dispatch('MOVE_SHEET', { sheetId: 'sheet1', delta: 2 });
    const { bytes } = saveBook(open);
    expect(openWorkbook(bytes).sheets.map(({ name }) => name)).toEqual(['Two', 'Three', 'One']);
    expect(readSheetValues(bytes, 'Two')).toEqual([[2]]);
    expect(partOf(bytes, 'xl/workbook.xml')).not.toContain('activeTab');
  });

  it('stores a sheet that was hidden, and one that was shown again', async () => {
    const open = openExample();
    open.book.model.dispatch('HIDE_SHEET', { sheetId: idOf(open, 'Quote') });
    const { bytes } = saveBook(open);
    expect(openWorkbook(bytes).sheets.map(({ visibility }) => visibility)).toEqual([
      'hidden',
      'visible',
      'visible',
      'visible',
    ]);
    expect(partOf(bytes, 'xl/workbook.xml')).toContain('activeTab="1"');
    expect(partOf(bytes, 'xl/worksheets/sheet1.xml')).not.toContain('tabSelected');
    expect((await readByOthers(bytes)).getWorksheet('Quote')?.state).toBe('hidden');
    const again = openBook(bytes, functions);
    again.book.model.dispatch('SHOW_SHEET', { sheetId: idOf(again, 'Quote') });
    expect(openWorkbook(saveBook(again).bytes).sheets[0]?.visibility).toBe('visible');
  });

  it('takes out a sheet with its tables and names, and formulas that read it say so', async () => {
    const open = openExample();
    const sheetId = idOf(open, 'Shop');
    open.book.model.dispatch('DELETE_SHEET', { sheetId, sheetName: 'Shop' });
    const { bytes, notes } = saveBook(open);
    expect(notes).toEqual([]);
    const { sheets, tables, names } = openWorkbook(bytes);
    expect(sheets.map(({ name }) => name)).toEqual(['Quote', 'Summary', 'List check']);
    expect(tables.map(({ name }) => name)).toEqual(['Parts']);
    expect(names).toEqual([]);
    const left = partNames(bytes);
    expect(left.filter((name) => /tables\/|worksheets\/sheet/.test(name))).toEqual([
      'xl/worksheets/sheet1.xml',
      'xl/tables/table1.xml',
      'xl/worksheets/sheet3.xml',
      'xl/worksheets/sheet4.xml',
    ]);
    expect(left).not.toContain('xl/worksheets/_rels/sheet2.xml.rels');
    const types = partOf(bytes, '[Content_Types].xml');
    for (const [, name] of types.matchAll(/PartName="\/([^"]*)"/g)) expect(left).toContain(name);
    expect(partOf(bytes, 'xl/workbook.xml')).not.toContain('definedName');
    expect((await readByOthers(bytes)).worksheets.map(({ name }) => name)).toHaveLength(3);
    const again = openBook(bytes, functions);
    expect(saveBook(again).bytes).toEqual(bytes);
  });

  it('takes the lost sheet out of names, rules and formulas that the grid does not keep', () => {
    const rule = (text: string) =>
      `<conditionalFormatting sqref="A1"><cfRule type="expression" dxfId="0" priority="1"><formula>${text}</formula></cfRule></conditionalFormatting>`;
    const names =
      '</sheets><definedNames><definedName name="Twice">Two!$A$1*2</definedName><definedName name="Kept">One!$A$1*2</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">Two!$A$1:$B$2</definedName><definedName name="_xlnm.Print_Area" localSheetId="2">\'The third\'!$A$1:$B$2</definedName></definedNames>';
    const parts = buildWorkbook([
      {
        name: 'One',
        rows: [[1, formula('_xlfn.LET(_xlpm.x,Two!A1,_xlpm.x)', 2)]],
        after: rule('Two!$A$1&gt;A1'),
      },
      { name: 'Two', rows: [[2]] },
      { name: 'The third', rows: [[3, formula('Two!A1', 2)]] },
    ]);
    const open = openBook(
      withPart(parts, 'xl/workbook.xml', (xml) => xml.replace('</sheets>', names)),
      functions,
    );
    open.book.model.dispatch('DELETE_SHEET', { sheetId: 'sheet2', sheetName: 'Two' });
    const { bytes } = saveBook(open);
    const workbook = openWorkbook(bytes);
    expect(workbook.names).toEqual([
      { name: 'Kept', text: 'One!$A$1*2', sheet: undefined },
      { name: '_xlnm.Print_Area', text: "'The third'!$A$1:$B$2", sheet: 1 },
    ]);
    expect(partOf(bytes, 'xl/worksheets/sheet1.xml')).toContain('<formula>#REF!&gt;A1</formula>');
    expect(workbook.sheets[0]?.cells?.formulas[1]?.text).toBe('_xlfn.LET(_xlpm.x,#REF!,_xlpm.x)');
    expect(workbook.sheets[1]?.cells?.formulas[1]?.text).toBe('#REF!');
    expect(workbook.sheets[1]?.cells?.values[1]).toEqual({ error: '#REF!' });
  });

  it('writes the new name of a sheet into rules, names and formulas that the grid does not keep', () => {
    const parts = buildWorkbook([
      {
        name: 'One',
        rows: [[1, formula('_xlfn.LET(_xlpm.x,Two!A1,_xlpm.x)', 2)]],
        after:
          '<dataValidations count="1"><dataValidation type="list" sqref="A1"><formula1>Two!$A$1:$A$3</formula1></dataValidation></dataValidations>',
      },
      { name: 'Two', rows: [[2]] },
    ]);
    const open = openBook(parts, functions);
    open.book.model.dispatch('RENAME_SHEET', { sheetId: 'sheet2', oldName: 'Two', newName: 'Second one' });
    const { bytes } = saveBook(open);
    expect(partOf(bytes, 'xl/worksheets/sheet1.xml')).toContain(
      "<formula1>'Second one'!$A$1:$A$3</formula1>",
    );
    expect(openWorkbook(bytes).sheets[0]?.cells?.formulas[1]?.text).toBe(
      "_xlfn.LET(_xlpm.x,'Second one'!A1,_xlpm.x)",
    );
  });

  it('takes out a table that was deleted, and leaves its cells', () => {
    const open = openExample();
    const { sheetId, zone } = open.book.tables.find('Parts') ?? {};
    open.book.model.dispatch('REMOVE_TABLE', { sheetId: sheetId as string, target: [zone as never] });
    const { bytes } = saveBook(open);
    expect(openWorkbook(bytes).tables.map(({ name }) => name)).not.toContain('Parts');
    expect(partNames(bytes)).not.toContain('xl/tables/table1.xml');
    expect(partOf(bytes, 'xl/worksheets/sheet1.xml')).not.toContain('tablePart');
    expect(readSheetValues(bytes, 'Quote')).toEqual(readSheetValues(savedExample(), 'Quote'));
  });
});
