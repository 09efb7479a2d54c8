import { tradeText } from '../../quantity/tradeText.js';

/** A cell in words and sizes, in lower case: `bottom edge 2'-6 1/2"` is two words and a size. */
export interface CellWords {
  words: string[];
  sizes: string[];
  /** Words and sizes in their order. */
  order: { word?: string; size?: string }[];
}

/** No cell of words and sizes is longer; one that is need not be taken apart to be refused. */
export const longestCell = 500;
const unitWords = new Set(['mm', 'cm', 'm', 'in', 'inch', 'inches', 'ft', 'feet', 'foot']);

/**
 * Parts a text into its words and its sizes; a unit behind digits belongs to the size. A dash or stroke parts them where
 * it has a space beside it; right behind a digit (`top 1/`) it stays, for the unfinished fraction.
 */
export function cellWords(text: string): CellWords {
  const order: CellWords['order'] = [];
  let size = '';
  const endSize = () => {
    const trimmed = size.replace(/^(?:[\s@=:()]|[-/](?=\s))+/, '').replace(/(?:[\s@=:()]|(?<=\s)[-/])+$/, '');
    if (/\d/.test(trimmed)) order.push({ size: trimmed });
    size = '';
  };
  for (const [run] of tradeText(text).matchAll(/[a-z]+|[^a-z]+/g)) {
    if (!/^[a-z]/.test(run) || (unitWords.has(run) && /\d ?$/.test(size))) size += run;
    else {
      endSize();
      order.push({ word: run });
    }
  }
  endSize();
  return {
    order,
    words: order.flatMap(({ word }) => word ?? []),
    sizes: order.flatMap(({ size: each }) => each ?? []),
  };
}
