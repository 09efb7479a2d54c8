import { InputError } from '../../core/inputError.js';
import { type ShopRange, shopRanges } from '../../core/shop/shopFormula.js';
import { readAddresses } from '../../workbook/area.js';
import type { Place } from '../../workbook/reading.js';
import { WorkbookError } from '../../workbook/workbookError.js';

/** The places that the formula of the shop cell names, in the order of SHOP's arguments; undefined where one is left out. */
export function shopPlaces(formula: string, sheet: string): (Place | undefined)[] {
  return rangesOf(formula).map((range) => range && placeOf(range, sheet));
}

function rangesOf(formula: string): (ShopRange | undefined)[] {
  try {
    return shopRanges(formula);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    throw new WorkbookError('failed', error.message);
  }
}

function placeOf(range: ShopRange, sheet: string): Place | undefined {
  if (range.kind === 'table') return { table: range.name };
  if (range.kind === 'name') return { name: range.name };
  return readAddresses(range.address, range.sheet ?? sheet)[0];
}
