import { type Failure, InputError } from '../inputError.js';
import { itemName } from '../press/limit.js';
import type { PressItemKey } from '../press/item/pressItem.js';
import { type Press, pressValue } from '../press/press.js';
import type { Shop } from '../shop/readShop.js';
import { setting } from '../shop/setting.js';
import type { Working } from '../working/working.js';
import { rowCost, type RowCost } from './rowCost.js';

/** What a row costs, and what its pieces sell for. */
export interface RowMoney {
  /** Undefined where the hourly rate of the press is not given. */
  cost?: RowCost;
  /** Price of one piece at the quantities the shop asks for. */
  breaks: readonly { pieces: number; each: number }[];
  /** Numbers of pieces whose price is the least that a job is sold for. */
  breaksAtMinimum: readonly number[];
  /** Which of the two the price was made with. */
  pricedBy?: 'markup' | 'margin';
  /** Items of the press that are not known, and what was taken for them. */
  assumed: readonly { item: string; as: number }[];
  /** A cell that the cost needs cannot be read: there is no cost, and the time stands. */
  refused?: Failure;
}

/** A row, as far as its cost needs it. */
export interface PricedWork {
  qty: number;
  pieceKg: number;
  seconds: number;
  /** The time of so many pieces. */
  secondsOf: (pieces: number) => number;
}

/**
 * The cost and the price of a row on its press.
 * @param work the row, its time in s
 * @param press gives the hourly rate and the crew
 * @param shop gives the price of steel, markup or margin, and the quantities that a price is asked for
 * @param working collects the steps when given
 * @returns money; without cost and with the reason where a cell cannot be read
 * Source: common practice, no source.
 */
export function rowMoney(work: PricedWork, press: Press, shop: Shop, working?: Working): RowMoney {
  try {
    return priced(work, press, shop, working);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { breaks: [], breaksAtMinimum: [], assumed: [], refused: error.failure };
  }
}

function priced(
  { qty, pieceKg, seconds, secondsOf }: PricedWork,
  press: Press,
  shop: Shop,
  working?: Working,
): RowMoney {
  const ratePerHour = known(press, 'hourlyRate');
  if (ratePerHour === undefined) return { breaks: [], breaksAtMinimum: [], assumed: [] };
  const isCrewPaid = setting(shop, 'rateIncludesCrew') === 'no';
  const crew = isCrewPaid ? known(press, 'crew') : 1;
  const [markup, margin] = [setting(shop, 'markup'), setting(shop, 'margin')];
  const costOf = (pieces: number, takenS: number, steps?: Working): RowCost =>
    rowCost(
      {
        seconds: takenS,
        massKg: pieces * pieceKg,
        ratePerHour,
        people: crew ?? 1,
        materialPricePerKg: setting(shop, 'materialPricePerKg'),
        scrapAllowance: setting(shop, 'scrapAllowance'),
        markup,
        margin,
      },
      steps,
    );
  const least = setting(shop, 'minimumCharge') ?? 0;
  const wholes = setting(shop, 'quantityBreaks').flatMap((pieces) => {
    const { price: whole } = costOf(pieces, secondsOf(pieces));
    return whole === undefined ? [] : [{ pieces, whole }];
  });
  const pricedBy = markup !== undefined ? 'markup' : margin !== undefined ? 'margin' : undefined;
  return {
    cost: costOf(qty, seconds, working),
    breaks: wholes.map(({ pieces, whole }) => ({ pieces, each: Math.max(whole, least) / pieces })),
    breaksAtMinimum: wholes.flatMap(({ pieces, whole }) => (whole < least ? [pieces] : [])),
    assumed: crew === undefined ? [{ item: itemName('crew'), as: 1 }] : [],
    ...(pricedBy ? { pricedBy } : {}),
  };
}

function known(press: Press, key: PressItemKey): number | undefined {
  const value = pressValue(press, key);
  if (value.state === 'bad') throw new InputError(value.failure);
  return value.state === 'value' ? value.value : undefined;
}
