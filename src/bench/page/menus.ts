import { registries as untyped } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type * as Engine from '@odoo/o-spreadsheet';

const { topbarMenuRegistry } = untyped as typeof Engine.registries;

/** Entries of the grid's menus for things that a saved workbook would not hold. */
const unsaved: readonly (readonly [string, string])[] = [
  ['insert_chart', 'insert'],
  ['insert_carousel', 'insert'],
  ['insert_pivot', 'insert'],
  ['insert_image', 'insert'],
  ['insert_checkbox', 'insert'],
  ['insert_dropdown', 'insert'],
  ['format_cf', 'format'],
  ['data_validation', 'data'],
  ['settings', 'file'],
];

/** Takes them out of the menus. */
export function hideWhatIsNotSaved(): void {
  for (const [entry, menu] of unsaved)
    topbarMenuRegistry.replaceChild(entry, [menu], { id: entry, name: entry, isVisible: () => false });
}
