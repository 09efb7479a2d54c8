import { DEFAULT_LOCALE as untypedLocale, helpers } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Locale } from '@odoo/o-spreadsheet';
import { isCellError, type CellValue } from '../../xlsx';

export const locale = untypedLocale as Locale;

/** What a cell of the grid is given for a constant. */
export interface EngineContent {
  content: string;
  /** Undefined for a general number format. */
  format: string | undefined;
}

/** Text stays the text it is: what looks like a number, a date or a formula is written with an apostrophe. */
export function constantContent(value: CellValue, format: string | undefined): EngineContent {
  if (value === null || value === '') return { content: '', format };
  if (typeof value === 'number')
    return { content: String(value), format: isTextFormat(format) ? undefined : format };
  if (typeof value === 'boolean') return { content: value ? 'TRUE' : 'FALSE', format };
  if (isCellError(value)) return { content: value.error, format };
  // In a text cell the engine takes everything as it stands, except formulas.
  if (isTextFormat(format) && !value.startsWith('=')) return { content: value, format };
  const kept = isTextFormat(format) ? undefined : format;
  return { content: isPlainText(value) ? value : `'${value}`, format: kept };
}

export const isTextFormat = (format: string | undefined): boolean => format === '@';

function isPlainText(text: string): boolean {
  if (/^['=]|\n/.test(text) || /^(?:true|false)$/i.test(text.trim())) return false;
  return !helpers.isNumber(text, locale) && !helpers.isDateTime(text, locale);
}

/** A number format the engine can show; others are left out and the number is shown as it is. */
export function engineFormat(format: string | undefined): string | undefined {
  if (format === undefined || format === 'General' || format === '') return undefined;
  if (format === '@') return format;
  try {
    helpers.formatValue(1234.5, { format, locale });
    helpers.formatValue(-1234.5, { format, locale });
    return format;
  } catch {
    return undefined;
  }
}
