import type { Working } from '../working/working.js';

/** What a price stands on; what is undefined is not known. */
export interface CostBasis {
  seconds: number;
  /** Of the whole row. */
  massKg: number;
  ratePerHour: number;
  /** How often the rate is paid: the crew, where the rate is for each of them. */
  people: number;
  materialPricePerKg: number | undefined;
  scrapAllowance: number;
  markup: number | undefined;
  margin: number | undefined;
}

export interface RowCost {
  press: number;
  /** Undefined where there is no price of steel. */
  material?: number;
  /** Press and, where its price is known, material. */
  cost: number;
  /** Undefined where the shop gives neither markup nor margin. */
  price?: number;
}

const secondsPerHour = 3600;

/**
 * What a row costs and is sold for.
 *
 * Formula: cost = t · rate · people + m · (1 + scrap) · p; price = cost · (1 + markup), or cost / (1 − margin)
 * @param basis time in s, mass of the row in kg, rate per hour, price of steel per kg; markup and margin as shares
 * @param working collects the steps when given
 * @returns amounts in the currency of the shop
 * Valid for amounts from zero and a margin under 1; of markup and margin one at most.
 * @example half an hour at 90 an hour and 20 kg at 1.50 per kg cost 75; at a markup of 0.2 they are sold for 90
 * Source: common practice, no source.
 */
export function rowCost(basis: CostBasis, working?: Working): RowCost {
  const { seconds, massKg, ratePerHour, people, materialPricePerKg, scrapAllowance, markup, margin } = basis;
  const press = (seconds / secondsPerHour) * ratePerHour * people;
  const material =
    materialPricePerKg === undefined ? undefined : massKg * (1 + scrapAllowance) * materialPricePerKg;
  const cost = press + (material ?? 0);
  const price =
    markup !== undefined ? cost * (1 + markup) : margin !== undefined ? cost / (1 - margin) : undefined;
  const money = (symbol: string, meaning: string, value: number) => ({
    symbol,
    meaning,
    kind: 'money' as const,
    value,
  });
  working?.step({
    title: 'Cost of the press',
    formula: 'P = t · rate · people',
    values: [
      { symbol: 't', meaning: 'time', kind: 'minutes', value: seconds },
      money('rate', 'rate per hour', ratePerHour),
      { symbol: 'people', meaning: 'times the rate is paid', kind: 'count', value: people },
    ],
    result: money('P', 'press', press),
    source: 'the Hourly rate of the press, as given',
  });
  if (material !== undefined && materialPricePerKg !== undefined) {
    working?.step({
      title: 'Cost of the material',
      formula: 'M = m · (1 + scrap) · p',
      values: [
        { symbol: 'm', meaning: 'mass of the row', kind: 'mass', value: massKg },
        { symbol: 'scrap', meaning: 'scrap allowance', kind: 'ratio', value: scrapAllowance },
        { symbol: 'p', meaning: 'price of steel', kind: 'moneyPerMass', value: materialPricePerKg },
      ],
      result: money('M', 'material', material),
      source: 'the Material price of the shop, as given',
    });
  }
  if (price !== undefined) {
    const share = markup ?? margin ?? 0;
    working?.step({
      title: 'Price',
      formula: markup !== undefined ? 'price = cost · (1 + markup)' : 'price = cost / (1 − margin)',
      values: [
        money('cost', 'cost', cost),
        {
          symbol: markup !== undefined ? 'markup' : 'margin',
          meaning: 'as given',
          kind: 'ratio',
          value: share,
        },
      ],
      result: money('price', 'price of the row', price),
      source: 'the settings of the shop, as given',
    });
  }
  return {
    press,
    ...(material === undefined ? {} : { material }),
    cost,
    ...(price === undefined ? {} : { price }),
  };
}
