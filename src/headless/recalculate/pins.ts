import { zoneSize } from '../../sheet/address.js';
import type { StoredFormula } from '../../xlsx/storedCells.js';
import type { Formula } from '../../sheet/formula/nodes.js';

const mostFilled = 1_000_000;
const volatile = new Set(['NOW', 'TODAY', 'RAND', 'RANDBETWEEN', 'RANDARRAY']);
const atCalculation = new Set(['INDIRECT', 'OFFSET', 'CELL', 'INFO']);
const ofDates =
  /^(?:DATE|DATEDIF|DATEVALUE|DAY|DAYS|DAYS360|EDATE|EOMONTH|ISOWEEKNUM|MONTH|NETWORKDAYS|TEXT|WEEKDAY|WEEKNUM|WORKDAY|YEAR|YEARFRAC)(?:\.INTL)?$/;

/** Why a formula is not evaluated, in one sentence; undefined when it is. */
export function whyPinned(
  formula: Formula,
  stored: StoredFormula,
  workbook: { date1904: boolean; iterates: boolean },
  supported: ReadonlySet<string>,
): string | undefined {
  if (stored.ref && zoneSize(stored.ref) > mostFilled) return 'It fills more than a million cells.';
  if (stored.kind === 'table') return 'It belongs to a what-if data table.';
  for (const name of formula.functions) {
    const why = whyNot(name, supported);
    if (why) return why;
    if (workbook.date1904 && ofDates.test(name))
      return `It uses ${name} in a workbook that counts days from 1904.`;
  }
  if (stored.text === '') return 'Its formula is stored in a way that is not evaluated here.';
  return formula.unsupported;
}

function whyNot(name: string, supported: ReadonlySet<string>): string | undefined {
  if (supported.has(name)) return undefined;
  if (volatile.has(name)) return `It uses ${name}, whose value depends on the moment.`;
  if (atCalculation.has(name)) return `It uses ${name}, which finds out what it reads only when calculated.`;
  if (/^_XLUDF_|^_XLDUDF_|^__XLUDF/.test(name)) return "It uses another add-in's function.";
  return `It uses ${name}, which is not among the functions evaluated here.`;
}
