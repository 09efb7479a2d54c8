import { atMost } from '../atMost.js';
import type { Working } from '../working/working.js';

export interface StockBars {
  count: number;
  /** Pieces from one bar. */
  piecesEach: number;
  lengthMm: number;
}

/**
 * The bars that pieces of one length are cut from, for handling; a plan of the cuts may need fewer.
 *
 * Formula: n = ⌈q / ⌊L / (l + k)⌋⌉; a piece longer than the bars that are usual comes in a bar of its own
 * @param input pieces q, their length l, what a cut loses k, length of a bar L, all in mm
 * @param working collects the steps when given
 * @returns the number of bars, pieces from each, and the length of a bar in mm
 * Valid for whole numbers of pieces and lengths above zero.
 * @example 30 pieces of 600 mm from bars of 6000 mm are 3 bars
 * Source: common practice, no source.
 */
export function stockBars(
  { pieces, pieceMm, lossMm, barMm }: { pieces: number; pieceMm: number; lossMm: number; barMm: number },
  working?: Working,
): StockBars {
  const fits = atMost(pieceMm, barMm);
  const piecesEach = fits ? Math.max(1, Math.floor((barMm / (pieceMm + lossMm)) * (1 + 1e-9))) : 1;
  const lengthMm = fits ? barMm : pieceMm;
  const count = Math.ceil(pieces / piecesEach);
  working?.step({
    title: 'Bars to pull',
    formula: 'n = ⌈q / ⌊L / (l + k)⌋⌉',
    values: [
      { symbol: 'q', meaning: 'pieces', kind: 'count', value: pieces },
      { symbol: 'L', meaning: 'length of a bar', kind: 'length', value: lengthMm },
      { symbol: 'l', meaning: 'length of a piece', kind: 'length', value: pieceMm },
      { symbol: 'k', meaning: 'lost at a cut', kind: 'length', value: lossMm },
    ],
    result: { symbol: 'n', meaning: 'bars', kind: 'count', value: count },
    source: 'common practice, no source',
  });
  return { count, piecesEach, lengthMm };
}
