import '../support/engineOnNode.js';
import type * as Engine from '@odoo/o-spreadsheet';
import { registries as untyped } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import { describe, expect, it } from 'vitest';
import { hideWhatIsNotSaved } from '../../../src/bench/page/menus.js';

const registries = untyped as typeof Engine.registries;
const { topbarMenuRegistry, cellMenuRegistry, colMenuRegistry, rowMenuRegistry } = registries;
const offered = (menu: typeof cellMenuRegistry) => menu.getMenuItems().map(({ id }) => id);
const all = () => [cellMenuRegistry, colMenuRegistry, rowMenuRegistry].flatMap(offered);

/** Entries of the menus at the top that are shown in every workbook. */
function shownAbove(): string[] {
  const env = new Proxy({}, { get: () => undefined }) as never;
  return topbarMenuRegistry
    .getMenuItems()
    .flatMap(({ children }) => children(env))
    .filter(({ isVisible, id }) => !hidden.includes(id) || isVisible(env))
    .map(({ id }) => id);
}

const hidden = [
  'insert_chart',
  'insert_carousel',
  'insert_pivot',
  'insert_image',
  'insert_checkbox',
  'insert_dropdown',
  'insert_link',
  'group_headers',
  'format_cf',
  'data_validation',
  'settings',
];
const hiddenHere = ['insert_link', 'conditional_formatting', 'group_columns', 'group_rows'];

describe('the menus of the grid', () => {
  it('offer nothing that is not saved', () => {
    const before = all();
    for (const entry of hiddenHere) expect(before).toContain(entry);
    hideWhatIsNotSaved();
    const [here, above] = [all(), shownAbove()];
    for (const entry of hiddenHere) expect(here).not.toContain(entry);
    for (const entry of hidden) expect(above).not.toContain(entry);
    for (const entry of ['cut', 'paste', 'delete_row', 'hide_columns']) expect(here).toContain(entry);
    for (const entry of ['format_bold', 'insert_sheet', 'freeze_panes']) expect(above).toContain(entry);
  });

  it('have no key for links either', () => {
    const position = { sheetId: 'any', col: 0, row: 0 };
    expect(registries.cellPopoverRegistry.get('LinkEditor').onOpen?.(position, {} as never)).toEqual({
      isOpen: false,
    });
  });

  it('of a sheet is made of the same kind of menu', () => {
    const menu = new (cellMenuRegistry.constructor as new () => typeof cellMenuRegistry)();
    menu
      .add('rename', { name: 'Rename', id: 'rename' })
      .add('protect_sheet', { name: 'x', id: 'protect_sheet' });
    expect(offered(menu)).toEqual(['rename']);
  });
});
