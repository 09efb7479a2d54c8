import type { Zone } from './address.js';

/** A table of the workbook; its zone includes the header and totals rows. */
export interface Table {
  name: string;
  /** Position of its sheet in the workbook. */
  sheet: number;
  zone: Zone;
  headerRows: number;
  totalsRows: number;
  columns: string[];
}
