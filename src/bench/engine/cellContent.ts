import { DEFAULT_LOCALE as untypedLocale, helpers } from '@odoo/o-spreadsheet/dist/o_spreadsheet.esm.js';
import type { Cell, Locale } from '@odoo/o-spreadsheet';
import { isCellError, type StoredValue } from '../../sheet/cellValue.js';

export const locale = untypedLocale as Locale;

/** What a cell of the grid is given for a constant. */
export interface EngineContent {
  content: string;
  /** Undefined for a general number format. */
  format: string | undefined;
}

/**
 * A text format that lets a number be one: the engine's own would turn numbers, results and what follows an
 * apostrophe into text as it stands.
 */
export const resultInText = '0.###############;-0.###############;0;@';
/** The same for whole numbers, which the engine would show with a point behind them. */
const wholeInText = '0;-0;0;@';

/** Whether a number stands in a text cell with this format of the engine's. */
export const isNumberInText = (format: string | undefined): boolean =>
  format === resultInText || format === wholeInText;

/** The engine's format for a constant in a text cell. */
export const formatInText = (value: StoredValue): string =>
  typeof value === 'number' && Number.isSafeInteger(value) ? wholeInText : resultInText;

/** The number format of a cell as spreadsheets write it. */
export function writtenFormat(format: string | undefined): string {
  return isNumberInText(format) ? '@' : format || 'General';
}

/** Text stays the text it is: what looks like a number, a date or a formula is written with an apostrophe. */
export function constantContent(value: StoredValue, format: string | undefined): EngineContent {
  if (value === null || value === '') return { content: '', format };
  // In a text cell the engine takes text as it stands, except formulas.
  if (isTextFormat(format)) {
    if (typeof value === 'string' && !value.startsWith('=')) return { content: value, format };
    return { content: plainContent(value), format: formatInText(value) };
  }
  return { content: plainContent(value), format };
}

function plainContent(value: Exclude<StoredValue, null>): string {
  if (typeof value === 'number') return String(value);
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  if (isCellError(value)) return value.error;
  return isPlainText(value) ? value : `'${value}`;
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

/** The constant in a cell of the grid. */
export function constantOf(cell: Extract<Cell, { isFormula: false }>): Exclude<StoredValue, object> | null {
  if (isTextFormat(cell.format)) return cell.content;
  if (cell.content.startsWith("'")) return cell.content.slice(1);
  return cell.parsedValue;
}
