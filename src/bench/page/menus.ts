import { registries as untyped } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type * as Engine from '@odoo/o-spreadsheet';

const { topbarMenuRegistry, cellMenuRegistry, cellPopoverRegistry } = untyped as typeof Engine.registries;

/** Entries of the grid's menus for things that a saved workbook would not hold, with the menus they are in. */
const unsaved: readonly (readonly [entry: string, ...menus: string[]])[] = [
  ['insert_chart', 'insert'],
  ['insert_carousel', 'insert'],
  ['insert_pivot', 'insert'],
  ['insert_image', 'insert'],
  ['insert_checkbox', 'insert'],
  ['insert_dropdown', 'insert'],
  ['insert_link', 'insert'],
  ['group_headers', 'view'],
  ['format_cf', 'format'],
  ['data_validation', 'data'],
  ['settings', 'file'],
];

/** The same in the menus of cells, columns, rows and sheets. */
const unsavedHere = new Set([
  'insert_link',
  'conditional_formatting',
  'group_columns',
  'ungroup_columns',
  'group_rows',
  'ungroup_rows',
  'duplicate',
  'protect_sheet',
  'remove_sheet_protection',
]);

/** Takes them out of the menus. */
export function hideWhatIsNotSaved(): void {
  for (const [entry, ...menus] of unsaved)
    topbarMenuRegistry.replaceChild(entry, menus, { id: entry, name: entry, isVisible: () => false });
  // Links have a key of their own.
  cellPopoverRegistry.replace('LinkEditor', { onOpen: () => ({ isOpen: false }) });
  // The menu of a sheet is made anew each time it opens: what all menus have in common is changed.
  const menus = Object.getPrototypeOf(cellMenuRegistry) as typeof cellMenuRegistry;
  const { getMenuItems } = menus;
  menus.getMenuItems = function (this: typeof cellMenuRegistry) {
    return getMenuItems.call(this).filter(({ id }) => !unsavedHere.has(id));
  };
}
