import { refuse } from '../inputError.js';
import { quoted } from './cellValue.js';

/** The parts of an inch that rules and drawings have. */
const partsOfInch = new Set([2, 4, 8, 16, 32, 64]);

/**
 * The value of a fraction of an inch, `3/8`. Refused where a digit or a space was lost: `3/6`, which no rule has, and
 * `11/2`, which may be 1-1/2 or 5-1/2. Common practice, no source.
 */
export function inchFraction(
  fraction: string,
  { argument, received }: { argument: string; received: string },
): number {
  const [over = '', under = ''] = fraction.split('/');
  const [parts, whole] = [Number(over), Number(under)];
  if (!partsOfInch.has(whole) || parts === 0 || over.startsWith('0')) {
    const problem = `${inText(fraction, received)} is no fraction of an inch.`;
    return refuse(
      argument,
      received,
      problem,
      'Write halves, quarters, 8ths, 16ths, 32nds or 64ths, or a decimal.',
    );
  }
  if (parts < whole) return parts / whole;
  const improper = mixed(parts, whole);
  const others = lostSpaces(over, whole);
  const problem = `${inText(fraction, received)} may be ${[...others, improper].join(' or ')}.`;
  const lone = `${inText(fraction, received)} is more than 1.`;
  return refuse(
    argument,
    received,
    others.length === 0 ? lone : problem,
    `Write ${[...others, improper].join(' or ')}.`,
  );
}

function inText(fraction: string, received: string): string {
  return fraction === received.trim() ? quoted(received) : `${fraction} in ${quoted(received)}`;
}

/** `5-1/2` for 11 halves. */
function mixed(parts: number, whole: number): string {
  const rest = parts % whole;
  return rest === 0 ? String(parts / whole) : `${Math.floor(parts / whole)}-${rest}/${whole}`;
}

/** Mixed numbers that lost what stood between: `113/16` may be 1-13/16 or 11-3/16. */
function lostSpaces(over: string, whole: number): string[] {
  const cuts = Array.from({ length: over.length - 1 }, (_, at) => at + 1);
  return cuts.flatMap((at) => {
    const parts = Number(over.slice(at));
    const isFraction = over[at] !== '0' && parts < whole && parts % 2 === 1;
    return isFraction && over[0] !== '0' ? [`${over.slice(0, at)}-${over.slice(at)}/${whole}`] : [];
  });
}
