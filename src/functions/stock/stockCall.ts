import { refuse } from '../../core/inputError.js';
import { type CellValue, isBlank } from '../../core/quantity/cellValue.js';
import { readLength } from '../../core/quantity/readLength.js';
import { inShopUnit } from '../../core/quantity/shopUnit.js';
import type { LengthUnit } from '../../core/quantity/units.js';
import type { Shop } from '../../core/shop/readShop.js';
import { forSection } from '../../core/shop/bySection.js';
import { setting } from '../../core/shop/setting.js';
import type { StockLength, StockProblem } from '../../core/stock/stockProblem.js';
import type { ScalarArgument } from '../argument/argument.js';
import { shopOrUnitArgument } from '../argument/shop.js';
import type { Named } from './columns.js';
import { type ListedParts, partsArgument } from './parts.js';
import { type ListedStocks, stocksArgument } from './stocks.js';

/** What is cut off; `none` says 0, since a 0 is read as a blank cell. */
function lossArgument(
  kind: 'thickness' | 'distance',
  meaning: string,
  omitted: string,
): ScalarArgument<number | undefined> {
  return {
    kind: 'length',
    meaning,
    dimensionality: 'scalar',
    optional: true,
    omitted,
    read: (value: CellValue, { argument, unit }) => {
      if (isBlank(value)) return undefined;
      if (typeof value === 'string' && /^\s*none\s*$/i.test(value)) return 0;
      return readLength(value, argument, unit, kind);
    },
  };
}

export const stockSource =
  'column generation: Gilmore and Gomory, 1961 and 1963; bound: Farley, 1990 (from memory); every plan is counted again by code of its own';

/** What the functions of stock plans take. */
export const stockArguments = {
  parts: partsArgument,
  stock: stocksArgument,
  shop: shopOrUnitArgument,
  kerf: lossArgument(
    'thickness',
    'What a cut takes, across it: kerf of the saw, slug of the shear; none for a single blade',
    'the setting Cut kerf, else none',
  ),
  trim: lossArgument(
    'distance',
    'Cut off the front end of each bar, with one more cut',
    'the setting End trim, else none',
  ),
  grip: lossArgument(
    'distance',
    'End of each bar that the machine holds and cannot cut from',
    'the setting Grip, else none',
  ),
};

export interface StockCall {
  parts: ListedParts;
  stock: ListedStocks;
  shop: Shop | undefined;
  kerf: number | undefined;
  trim: number | undefined;
  grip: number | undefined;
}

/** A problem as it is planned, and which of its losses nobody gave. */
export interface AskedProblem {
  problem: StockProblem;
  notGiven: readonly string[];
}

/** The problem of a call. Refuses parts of one section or grade and bars of another. */
export function problemOf({ parts, stock, shop, ...given }: StockCall): AskedProblem {
  for (const what of ['section', 'grade'] as const) requireSame(parts[what], stock[what], what);
  const losses = {
    kerf: given.kerf ?? forSection(setting(shop, 'cutKerf') ?? [], parts.section?.written ?? ''),
    trim: given.trim ?? setting(shop, 'endTrimMm'),
    grip: given.grip ?? setting(shop, 'gripMm'),
  };
  return {
    problem: {
      parts: parts.parts,
      stocks: stock.stocks,
      widthMm: parts.widthMm,
      turning: parts.turning,
      kerfMm: losses.kerf ?? 0,
      trimMm: losses.trim ?? 0,
      gripMm: losses.grip ?? 0,
      keepMm: setting(shop, 'shortestDropMm') ?? keptByNobody(stock.stocks),
    },
    notGiven: Object.entries(losses).flatMap(([name, value]) => (value === undefined ? [name] : [])),
  };
}

function requireSame(ofParts: Named | undefined, ofBars: Named | undefined, what: 'section' | 'grade'): void {
  if (!ofParts || !ofBars || ofParts.key === ofBars.key) return;
  const problem = `these bars are ${ofBars.written}, and the parts ${ofParts.written}.`;
  refuse('Stock', ofBars.written, problem, `Give the bars of the ${what} of the parts.`);
}

/** Longer than every bar: no rest is kept. */
const keptByNobody = (stocks: readonly StockLength[]) =>
  2 * Math.max(...stocks.map(({ lengthMm }) => lengthMm));

/** A length as a number of the sheet. */
export const shownLength = (lengthMm: number, unit: LengthUnit) => inShopUnit(lengthMm, 'length', unit);
