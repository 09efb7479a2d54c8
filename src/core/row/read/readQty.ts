import { refuse } from '../../inputError.js';
import { type CellValue, quoted } from '../../quantity/cellValue.js';
import { readCount } from '../../quantity/readCount.js';
import type { RowJob } from '../rowJob.js';

/** How many pieces, and how many of each hand where the cell tells them apart. */
export type Qty = Pick<RowJob, 'qty' | 'hands'>;

const greatestQty = 1_000_000;
const allowed = 'Write a whole number of pieces, or 2R 2L for right and left.';
const oneHand = /(\d{1,7}) ?(r|l)(?:h|ight|eft)?(?:[- ]?hand)?(?![a-z])\.?/gi;

/** Reads a quantity: `4`, or `2R 2L`, `2 RH, 2 LH`, `2R/2L` where right-hand and left-hand pieces are told apart. */
export function readQty(value: CellValue, argument: string): Qty {
  if (typeof value === 'string' && /\d ?[rl]/i.test(value)) return handsOf(value, argument);
  return { qty: pieces(readCount(value, argument, allowed), value, argument) };
}

function handsOf(value: string, argument: string): Qty {
  const hands = { right: 0, left: 0 };
  const told = new Set<string>();
  const rest = value.replace(oneHand, (_, count: string, letter: string) => {
    const hand = letter.toLowerCase() === 'r' ? 'right' : 'left';
    if (told.has(hand)) {
      refuse(argument, value, `${quoted(value)} counts the ${hand}-hand pieces twice.`, allowed);
    }
    told.add(hand);
    hands[hand] = Number(count);
    return '';
  });
  if (!/^(?:[\s,;+&/]|and)*$/i.test(rest)) notAQty(value, argument);
  return { qty: pieces(hands.right + hands.left, value, argument), hands };
}

function pieces(qty: number, value: CellValue, argument: string): number {
  if (Number.isInteger(qty) && qty >= 0 && qty <= greatestQty) return qty;
  return notAQty(value, argument);
}

function notAQty(value: CellValue, argument: string): never {
  return refuse(argument, String(value), `${quoted(value)} is not a number of pieces.`, allowed);
}
