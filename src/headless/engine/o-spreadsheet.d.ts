/** The engine's module form, which loads much faster than its main entry; what is used of it is typed in engine.ts. */
declare module '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js' {
  export const registries: unknown;
  export const DEFAULT_LOCALE: unknown;
}
