import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { readCount } from '../../quantity/readCount.js';
import { visibleText } from '../../quantity/visibleText.js';
import type { RowJob } from '../job/rowJob.js';

/** How many pieces, and how many of each hand where the cell tells them apart. */
export type Qty = Pick<RowJob, 'qty' | 'hands'>;

const greatestQty = 1_000_000;
const longestText = 60;
const allowed = 'Write a whole number of pieces, or 2R 2L for right and left.';
/** `2R`, `2 RH`, and with the letter first, `R2`, where the text begins so. */
const countFirst = /(\d{1,7})[ -]?(r|l)(?:\.?h\.?|\/h|ight|eft)?(?:[- ]?hand)?(?![a-z])\.?/gi;
const letterFirst = /(r|l)(?:\.?h\.?|\/h|ight|eft)?(?:[- ]?hand)?\.?[ :-]?(\d{1,7})/gi;
const tellsHands = /\d[ -]?[rl](?:\.?h|\/h|ight|eft)?(?![a-z])|^ *[rl]h?[ :-]?\d/i;
/** `2R 2L = 4`, `4 (2R 2L)`. */
const withTotal = /^(?:(\d{1,7}) ?\((.+)\)|(.+?) ?(?:=|total) ?(\d{1,7}))$/i;

/**
 * Reads a quantity: `4`, or `2R 2L`, `2 RH, 2 LH`, `2R/2L`, `4 (2R 2L)` where right-hand and left-hand pieces are told
 * apart. Throws `invalid` for what is no quantity and for a total that is another. Source: common practice, no source.
 */
export function readQty(value: CellValue, argument: string): Qty {
  if (typeof value === 'string' && value.length <= longestText && tellsHands.test(value)) {
    return withHands(visibleText(value).trim(), argument);
  }
  return { qty: pieces(readCount(value, argument, allowed), value, argument) };
}

function withHands(value: string, argument: string): Qty {
  const [, before, inside, ahead, behind] = withTotal.exec(value) ?? [];
  const read = handsOf(inside ?? ahead ?? value, value, argument);
  const total = before ?? behind;
  if (total === undefined || Number(total) === read.qty) return read;
  const problem = `${quoted(value)}: the hands add up to ${read.qty}, not ${total}.`;
  return refuse(argument, value, problem, 'Correct one of them.');
}

function handsOf(text: string, value: string, argument: string): Qty {
  const hands = { right: 0, left: 0 };
  const told = new Set<string>();
  const letterLeads = /^[rl]/i.test(text);
  const rest = text.replace(letterLeads ? letterFirst : countFirst, (_, one: string, other: string) => {
    const [count, letter] = letterLeads ? [other, one] : [one, other];
    const hand = letter.toLowerCase() === 'r' ? 'right' : 'left';
    if (told.has(hand)) {
      refuse(argument, value, `${quoted(value)} counts the ${hand}-hand pieces twice.`, allowed);
    }
    told.add(hand);
    hands[hand] = Number(count);
    return '';
  });
  if (!/^(?:[\s,;+&/-]|and)*$/i.test(rest)) notAQty(value, argument);
  return { qty: pieces(hands.right + hands.left, value, argument), hands };
}

function pieces(qty: number, value: CellValue, argument: string): number {
  if (qty === 0) refuse(argument, String(value), `${quoted(value)} pieces are none.`, allowed);
  if (Number.isInteger(qty) && qty >= 0 && qty <= greatestQty) return qty;
  return notAQty(value, argument);
}

function notAQty(value: CellValue, argument: string): never {
  return refuse(argument, String(value), `${quoted(value)} is not a number of pieces.`, allowed);
}
