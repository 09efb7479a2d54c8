import type { Random } from './random.js';

/*
 * Values for cells and arguments: what shops write, what slips make of it, and what nobody writes.
 */

export type FuzzCell = string | number | boolean | null;

const words = [
  'FB 3/8x4', 'L4x4x1/2', 'PL 10x200', 'L 2 L3X3X1/4', 'HSS 4X4X1/4', 'C8X11.5', 'W12X26', 'RB 3/4', '2"x3"', 'IPE 200',
  'FL 100x10', 'L80x80x8', 'UNP 120', 'RO 60.3x4', 'SHS 100x5', 'A36', 'S355', 'A572 Gr 50', '1.0038', 'St37-2', '304L',
  '13/16', '1-1/16', '22', 'M20', 'Ø18', '4Ø18', '22x30', '13/16x1-7/8', '3/4 in', "24'-0", `1'-11/2`, '6.000', '1,500',
  '2 1/4', '6 m', '1200 mm', '10-1/2', '-5', '0', '1e5', '1E308', '-1E-300', 'none', 'yes', 'no', '–', 'sheared', 'sawn',
  'rolled', 'Bay A', 'Bay B', 'punch', 'both', '45', '30°', '22-1/2', 'TYP', '(4) 13/16', '4 EA', 'x', '"', "'", '=1+1',
  '@', '{1,2}', 'NaN', 'Infinity', 'undefined', '__proto__', 'constructor', '#N/A', '\u200b13/16\u200e', '¼', '½x3', '1\u00a01/2',
  '²', '٣', '１３/１６', '😀', '\ud800', '\u0000', 'é', 'ß', 'İ', 'a'.repeat(300), '1'.repeat(400), '1/'.repeat(200), '(('.repeat(100),
  '1 '.repeat(500), 'x1'.repeat(300), '-'.repeat(300), '1-'.repeat(300), "1'".repeat(200), '3/8x'.repeat(100),
] as const; // prettier-ignore

const numbers = [
  0, -0, 1, -1, 0.5, 0.8125, 3.14159, 10, 22, 45, 90, 250, 355, 1e3, 1e6, 1e12, 1e300, -1e300, 1e-300, 5e-324,
  Number.MAX_SAFE_INTEGER, 2 ** 31, 2 ** 53, 43_831, 36_678, 0.1 + 0.2, 1 / 3,
]; // prettier-ignore

/** A slip of the keyboard in a text, or two texts run together. */
export function slipped(random: Random, text: string): string {
  const at = random.below(text.length + 1);
  switch (random.below(6)) {
    case 0:
      return text.slice(0, at) + text.slice(at + 1);
    case 1:
      return (
        text.slice(0, at) + random.pick([...`0123456789 -/.,xX'"()°Ømin\u00d7\u2013\u00bd`]) + text.slice(at)
      );
    case 2:
      return text.slice(0, at) + text.slice(at).split('').reverse().join('');
    case 3:
      return text + random.pick(words);
    case 4:
      return random.chance(0.5) ? text.toUpperCase() : text.toLowerCase();
    default:
      return text.slice(at) + text.slice(0, at);
  }
}

export function fuzzText(random: Random, more: readonly string[] = []): string {
  let text: string = random.chance(0.6) && more.length > 0 ? random.pick(more) : random.pick(words);
  while (random.chance(0.3)) text = slipped(random, text);
  return text;
}

export function fuzzCell(random: Random, more: readonly string[] = []): FuzzCell {
  const kind = random.next();
  if (kind < 0.15) return null;
  if (kind < 0.2) return random.chance(0.5);
  if (kind < 0.35) return random.pick(numbers);
  if (kind < 0.45) return (random.next() - 0.2) * 10 ** random.below(6);
  return fuzzText(random, more);
}
