/** More of the engine's module form than the headless command uses, with the types of its main entry. */
declare module '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js' {
  export const Model: typeof import('@odoo/o-spreadsheet').Model;
  export const Spreadsheet: typeof import('@odoo/o-spreadsheet').Spreadsheet;
  export const stores: typeof import('@odoo/o-spreadsheet').stores;
  export const UIPlugin: typeof import('@odoo/o-spreadsheet').UIPlugin;
  export const CompiledFormula: typeof import('@odoo/o-spreadsheet').CompiledFormula;
  export const helpers: typeof import('@odoo/o-spreadsheet').helpers;
  export const isCoreCommand: (command: { type: string }) => boolean;
}
