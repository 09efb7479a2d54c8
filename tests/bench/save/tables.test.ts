import '../support/engineOnNode.js';
import { describe, expect, it } from 'vitest';
import { openBook, type OpenBook } from '../../../src/bench/open/openBook.js';
import { tableConfig } from '../../../src/bench/open/workbookData.js';
import { saveBook } from '../../../src/bench/save/saveBook.js';
import { openWorkbook } from '../../../src/xlsx/workbook.js';
import { parseZone } from '../../../src/sheet/address.js';
import { cell, functions, openExample } from '../support/openExample.js';
import { partOf } from '../support/styledWorkbook.js';

function change(open: OpenBook, config: object): void {
  const { sheetId, zone } = open.book.tables.find('Parts') ?? {};
  const result = open.book.model.dispatch('UPDATE_TABLE', {
    sheetId: sheetId as string,
    zone: zone as never,
    config: config as never,
  });
  expect(result.isSuccessful).toBe(true);
}
const saved = (open: OpenBook) => partOf(saveBook(open).bytes, 'xl/tables/table1.xml');

describe('saving the settings of a table', () => {
  const before = saved(openExample());

  it.each([
    [{ styleId: 'TableStyleMedium4' }, 'name="TableStyleMedium4"'],
    [{ bandedRows: false }, 'showRowStripes="0"'],
    [{ bandedColumns: true }, 'showColumnStripes="1"'],
    [{ firstColumn: true }, 'showFirstColumn="1"'],
    [{ lastColumn: true }, 'showLastColumn="1"'],
  ])('stores %j', (config, expected) => {
    const open = openExample();
    change(open, config);
    expect(before).not.toContain(expected);
    expect(saved(open)).toContain(expected);
    expect(saved(open).replace(/<tableStyleInfo[^>]*>/, '')).toBe(
      before.replace(/<tableStyleInfo[^>]*>/, ''),
    );
  });

  it('keeps its style where the grid has one that only the grid knows', () => {
    const open = openExample();
    open.book.model.dispatch('CREATE_TABLE_STYLE', {
      tableStyleId: 'ours',
      tableStyleName: 'Ours',
      templateName: 'lightColoredText',
      primaryColor: '#3366CC',
    });
    change(open, { styleId: 'ours' });
    expect(saved(open)).toBe(before);
  });

  it('stores that its headings have no filters', () => {
    const open = openExample();
    change(open, { hasFilters: false });
    expect(before).toContain('<autoFilter');
    expect(saved(open)).not.toContain('autoFilter');
  });

  it('stores a new table with the style it was given', () => {
    const open = openExample();
    const { sheetId } = cell(open.book, 'Summary', 'K40');
    open.book.model.dispatch('CREATE_TABLE', {
      sheetId,
      ranges: [open.book.getters.getRangeDataFromZone(sheetId, parseZone('K40:L43') as never)],
      tableType: 'static',
      config: { ...tableConfig(1, false), styleId: 'TableStyleDark2', bandedRows: false },
    });
    const { bytes } = saveBook(open);
    const xml = partOf(bytes, 'xl/tables/table6.xml');
    expect(xml).toContain('name="TableStyleDark2"');
    expect(xml).toContain('showRowStripes="0"');
    expect(openWorkbook(bytes).tables).toHaveLength(7);
    expect(saveBook(openBook(bytes, functions)).bytes).toEqual(bytes);
  });

  it('says that filters are not saved', () => {
    const open = openExample();
    const { sheetId, row, col } = cell(open.book, 'Quote', 'B5');
    open.book.model.dispatch('UPDATE_FILTER', {
      sheetId,
      row,
      col,
      value: { filterType: 'values', hiddenValues: ['bp1'] },
    } as never);
    expect(saveBook(open).notes).toEqual(['Filters are not saved: the file shows all rows.']);
  });
});
